package tamabako.desk.progress;

import java.util.List;
import tamabako.records.Pupil;

/// What a family reads: what was done, what goes well, what is being practised, and what comes
/// next. No figure of wrong answers, and nobody else to be compared with.
///
/// @param group the name of the pupil's group
/// @param today in words
/// @param opening how much was worked since when
/// @param well what goes well, in sentences
/// @param practising what is being practised now, in sentences
/// @param next what comes next; empty where nothing can be said yet
/// @param basis how much all of it rests on
public record ReportView(
        Pupil pupil,
        String group,
        String today,
        String opening,
        List<String> well,
        List<String> practising,
        List<String> next,
        String basis) {

    public ReportView {
        well = List.copyOf(well);
        practising = List.copyOf(practising);
        next = List.copyOf(next);
    }
}
