package tamabako.paper.layout;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.Story;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;

/// Whether the print font has a sign for all that other people wrote: title, name, date, numbers of
/// problems.
final class Legible {

    private Legible() {}

    /// @throws Unprintable naming the first character that it has no sign for, or that there are no
    ///   problems
    static void check(Sheet sheet, PrintWish wish, Measure measure) {
        if (sheet.problems().isEmpty()) {
            throw new Unprintable(new Reason.NoProblems(sheet.title()));
        }
        check(sheet.title(), "title", "", measure);
        check(sheet.id(), "id", "", measure);
        check(wish.name().orElse(""), "pupil", "", measure);
        check(wish.date().orElse(""), "day", "", measure);
        checkProblems(sheet.problems(), wish.language(), measure);
    }

    /// @throws Unprintable as for a sheet; also if a name or a story of the paper cannot be printed
    static void check(Paper paper, PaperPrintWish wish, Measure measure) {
        String title = wish.title().orElse(paper.ladder());
        Locale language = wish.language();
        if (paper.problems().isEmpty()) {
            throw new Unprintable(new Reason.NoProblems(title));
        }
        String ladder = wish.ladder().map(name -> name.in(language)).orElse("");
        check(title + ladder + paper.grade().name().in(language), "title", "", measure);
        check(paper.id(), "id", "", measure);
        check(wish.date().orElse(""), "day", "", measure);
        for (PaperSection section : paper.sections()) {
            check(section.section().name().in(language), "title", "", measure);
            checkProblems(section.problems(), language, measure);
        }
    }

    private static void checkProblems(List<Problem> problems, Locale language, Measure measure) {
        int place = 0;
        for (Numbered numbered : Numbered.of(problems)) {
            place++;
            String unit = numbered.problem().terms().unit().orElse("");
            check(numbered.label() + unit, "label", String.valueOf(place), measure);
            if (numbered.problem().terms().told().orElse(null) instanceof Story story) {
                check(story.in(language), "text", numbered.label(), measure);
            }
        }
    }

    private static void check(String text, String where, String problem, Measure measure) {
        OptionalInt missing = text.codePoints().filter(c -> !measure.prints(c)).findFirst();
        if (missing.isPresent()) {
            String character = Character.toString(missing.getAsInt());
            throw new Unprintable(new Reason.NoGlyph(character, where, problem));
        }
    }
}
