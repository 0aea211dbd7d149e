package tamabako.desk.sheet;

import java.util.EnumSet;
import java.util.OptionalInt;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.column.Lengths;
import tamabako.problems.making.column.TotalCondition;

/// The fields of the form that ask for columns.
final class ColumnFields {

    /// More digits than any kind of problem may have; the maker knows the limit of each kind.
    static final int MOST_DIGITS = 16;

    /// More rows than any paper has, and still looked through while a teacher waits.
    private static final int MOST_ROWS = 30;

    private static final int MOST_STROKES = 2_000;

    private ColumnFields() {}

    /// Columns in which one technique is practised: with it come those that are taught before it.
    static ColumnWish oneTechnique(Form form) {
        String learning = form.word("learning", MakeView.TECHNIQUES);
        Set<Technique> allowed = EnumSet.noneOf(Technique.class);
        Set<Technique> required = EnumSet.noneOf(Technique.class);
        for (String word : MakeView.TECHNIQUES) {
            allowed.add(technique(word));
            if (word.equals(learning)) {
                required.add(technique(word));
                break;
            }
        }
        int digits = form.whole("least", 1, MOST_DIGITS);
        return ColumnWish.of(form.whole("rows", 2, MOST_ROWS), digits)
                .withMinusRows(form.whole("minus", 0, MOST_ROWS))
                .allowing(allowed)
                .requiring(required);
    }

    private static Technique technique(String word) {
        for (Technique technique : Technique.values()) {
            if (technique.word().equals(word)) {
                return technique;
            }
        }
        throw new IllegalArgumentException("There is no technique " + word + ".");
    }

    /// Columns as they are freely wished for.
    static ColumnWish free(Form form) {
        Set<Technique> allowed = EnumSet.noneOf(Technique.class);
        Set<Technique> required = EnumSet.noneOf(Technique.class);
        String practised = form.word("practise", MakeView.PRACTISED);
        for (Technique technique : Technique.values()) {
            if (form.isTicked("technique", technique.word())) {
                allowed.add(technique);
            }
            if (technique.word().equals(practised)) {
                required.add(technique);
            }
        }
        ColumnWish wish =
                ColumnWish.of(form.whole("rows", 2, MOST_ROWS), 1)
                        .withLengths(lengths(form))
                        .withMinusRows(form.whole("minus", 0, MOST_ROWS))
                        .withPlaces(form.whole("places", 0, 15))
                        .allowing(allowed)
                        .requiring(required)
                        .goingBelowZero(form.isTicked("below", "yes"));
        return conditions(form, wish);
    }

    private static Lengths lengths(Form form) {
        int least = form.whole("least", 1, MOST_DIGITS);
        int most = form.whole("most", 1, MOST_DIGITS);
        OptionalInt inAll = form.wholeIfAny("ji", 1, MOST_ROWS * MOST_DIGITS);
        return inAll.isPresent()
                ? new Lengths.Total(inAll.getAsInt(), least, most)
                : new Lengths.Between(least, most);
    }

    /// What else is asked; a field that is left empty asks nothing.
    private static ColumnWish conditions(Form form, ColumnWish wish) {
        ColumnWish more = wish;
        OptionalInt run = form.wholeIfAny("run", 1, MOST_DIGITS);
        OptionalInt fewest = form.wholeIfAny("fewest", 1, MOST_STROKES);
        OptionalInt strokes = form.wholeIfAny("strokes", 1, MOST_STROKES);
        OptionalInt answer = form.wholeIfAny("answer", 1, MOST_DIGITS);
        if (run.isPresent()) {
            more = more.with(new HandCondition.CarryRun(run.getAsInt()));
        }
        if (fewest.isPresent() || strokes.isPresent()) {
            more =
                    more.with(
                            new HandCondition.Strokes(
                                    fewest.orElse(0), strokes.orElse(MOST_STROKES)));
        }
        if (answer.isPresent()) {
            more = more.with(new TotalCondition.AnswerLength(answer.getAsInt(), answer.getAsInt()));
        }
        return form.isTicked("customs", "papers") ? more.withCustomsOfPapers() : more;
    }
}
