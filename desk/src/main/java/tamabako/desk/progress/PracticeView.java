package tamabako.desk.progress;

import java.util.List;
import tamabako.desk.sheet.Form;
import tamabako.desk.sheet.Shown;
import tamabako.records.Pupil;

/// What the page of a pupil's next practice shows.
///
/// @param group the name of the pupil's group
/// @param form as it was filled in
/// @param seed that makes the same plan again
/// @param grade the grade that it is for; blank where there is no plan
/// @param reasons why these problems, in sentences
/// @param reviews when to practise again, in a sentence; blank without an exam
/// @param problems in their order
public record PracticeView(
        Pupil pupil,
        String group,
        Form form,
        long seed,
        String grade,
        List<String> reasons,
        String reviews,
        List<Shown> problems) {

    public PracticeView {
        reasons = List.copyOf(reasons);
        problems = List.copyOf(problems);
    }
}
