package tamabako.paper.layout;

import java.util.OptionalInt;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;
import tamabako.problems.Sheet;

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
        int place = 0;
        for (Numbered numbered : Numbered.of(sheet.problems())) {
            place++;
            String unit = numbered.problem().terms().unit().orElse("");
            check(numbered.label() + unit, "label", String.valueOf(place), measure);
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
