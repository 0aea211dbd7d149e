package tamabako.desk.ladder;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import tamabako.desk.ladder.KnownLadders.Known;
import tamabako.desk.ladder.LadderView.GradeView;
import tamabako.desk.ladder.LadderView.SectionView;
import tamabako.desk.ladder.LadderView.SourceView;
import tamabako.desk.web.Words;
import tamabako.problems.Mode;
import tamabako.problems.grade.Cite;
import tamabako.problems.grade.Elective;
import tamabako.problems.grade.Figure;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Section;
import tamabako.problems.words.ProblemWords;

/// Makes a ladder ready to be shown in one language.
final class LadderViews {

    private final Words words;
    private final FormatWords formats;

    LadderViews(Words words) {
        this.words = words;
        this.formats = new FormatWords(words);
    }

    LadderView of(Known known) {
        return new LadderView(
                known.ladder().id(),
                say(known.ladder().name()),
                say(known.ladder().about()),
                known.isOwn(),
                known.ladder().grades().stream().map(this::grade).toList());
    }

    private GradeView grade(Grade grade) {
        return new GradeView(
                grade.id(),
                say(grade.name()),
                formats.time(grade.time()),
                formats.pass(grade),
                grade.elective().map(choice -> choice(choice, grade)),
                grade.sections().stream().map(this::section).toList(),
                sources(grade));
    }

    private String choice(Elective choice, Grade grade) {
        List<String> names =
                choice.of().stream()
                        .flatMap(id -> grade.section(id).stream())
                        .map(section -> say(section.name()))
                        .toList();
        return words.say(
                "ladder.choice", choice.choose(), String.join(words.say("list.between"), names));
    }

    private SectionView section(Section section) {
        return new SectionView(
                section.id(),
                say(section.name()),
                section.count(),
                section.points(),
                section.batches().stream().map(formats::say).toList(),
                formats.time(section.time()),
                section.mode() == Mode.FRAME ? "" : section.mode().word());
    }

    /// Each source once, with all that it is given for.
    private List<SourceView> sources(Grade grade) {
        record Source(String name, boolean confirmed) {}
        Map<Source, TreeSet<Figure>> figures = new LinkedHashMap<>();
        for (Cite cite : grade.allCites()) {
            figures.computeIfAbsent(
                            new Source(say(cite.source()), cite.confirmed()), _ -> new TreeSet<>())
                    .addAll(cite.figures());
        }
        List<SourceView> views = new ArrayList<>();
        figures.forEach((source, of) ->
                views.add(new SourceView(source.name(), source.confirmed(), say(of))));
        return views;
    }

    private String say(Collection<Figure> figures) {
        return String.join(
                words.say("list.between"),
                figures.stream().map(ProblemWords.of(words.language())::say).toList());
    }

    private String say(Label label) {
        return label.in(words.language());
    }
}
