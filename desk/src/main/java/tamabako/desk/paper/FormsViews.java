package tamabako.desk.paper;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.ladder.FormatWords;
import tamabako.desk.paper.FormsView.FormView;
import tamabako.desk.web.Words;
import tamabako.frame.Technique;
import tamabako.problems.Mode;
import tamabako.problems.effort.Effort;
import tamabako.problems.setting.FormReport;
import tamabako.problems.setting.FormReport.FormLoad;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;
import tamabako.problems.setting.SettersCustoms;
import tamabako.records.KeptPapers;

/// Makes papers ready to be shown in one language.
final class FormsViews {

    private final Words words;

    FormsViews(Words words) {
        this.words = words;
    }

    FormsView of(KeptPapers kept, String ladder, String day) {
        Paper first = kept.papers().getFirst();
        FormReport report = FormReport.of(kept.papers());
        return new FormsView(
                kept.id(),
                ladder,
                first.grade().name().in(words.language()),
                day,
                first.customs() == SettersCustoms.KEPT,
                first.sections().stream().anyMatch(section -> section.pad().isPresent()),
                first.sections().stream().anyMatch(FormsViews::isCalled),
                report.forms().stream()
                        .map(load -> form(load, kept.papers().get(load.form() - 1)))
                        .toList(),
                spreads(report),
                first.sections().stream()
                        .map(section -> section.section().name().in(words.language()))
                        .toList());
    }

    private static boolean isCalled(PaperSection section) {
        return section.section().mode() == Mode.CALLED;
    }

    private FormView form(FormLoad load, Paper paper) {
        Effort effort = load.whole().effort();
        return new FormView(
                load.form(),
                paper.id(),
                effort.strokes(),
                effort.motions(),
                load.whole().digits(),
                time(effort.seconds()),
                effort.techniques());
    }

    private String time(double seconds) {
        return new FormatWords(words)
                .time(Optional.of(Duration.ofSeconds(Math.max(1, Math.round(seconds)))));
    }

    private static Map<String, String> spreads(FormReport report) {
        Map<String, String> spreads = new HashMap<>();
        spreads.put("strokes", percent(report.spreadOfStrokes()));
        spreads.put("motions", percent(report.spreadOfMotions()));
        spreads.put("seconds", percent(report.spreadOfSeconds()));
        for (Technique technique : List.of(Technique.values())) {
            spreads.put(technique.word(), percent(report.spreadOf(technique)));
        }
        return spreads;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
