package tamabako.problems.pad;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Pad;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Terms;
import tamabako.problems.making.Digits;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;
import tamabako.testkit.Draw;

class PadMakerTest {

    @Test
    void linesOverFiveLeavesComeToThePublishedTotals() {
        // Source: 珠算 見取算・読上算・伝票算, ja.wikibooks, a pad of five lines.
        Pad pad =
                new Pad(
                        Stream.of(
                                        "123 234 345 456 567",
                                        "678 789 890 901 12",
                                        "135 357 579 791 913",
                                        "246 468 680 802 24",
                                        "111 222 333 444 555")
                                .map(leaf ->
                                        Stream.of(leaf.split(" ")).map(BigDecimal::new).toList())
                                .toList());
        List<String> totals = List.of("1293", "2070", "2827", "3394", "2071");

        for (int line = 1; line <= 5; line++) {
            Column sum = new Column("", pad.rows(new PadLine(line, 1, 5)), Terms.PLAIN);
            assertThat(sum.answer().figures()).isEqualTo(totals.get(line - 1));
        }
    }

    @Test
    void problemsStandOnThePadAsTheySay() {
        forSeeds(
                300,
                draw -> {
                    PadWish wish = drawWish(draw);
                    int count = draw.between(1, wish.problems());

                    PadMade.Found found = found(PadMaker.make(wish, count, draw.bits()));

                    assertThat(found.pad().leaves())
                            .hasSize(wish.leaves())
                            .allSatisfy(leaf -> assertThat(leaf).hasSize(wish.lines()));
                    assertThat(found.problems()).hasSize(count);
                    Set<PadLine> lines = new HashSet<>();
                    for (Problem problem : found.problems()) {
                        PadLine line = (PadLine) problem.terms().told().orElseThrow();
                        assertThat(((Column) problem).rows()).isEqualTo(found.pad().rows(line));
                        assertThat(line.leaves()).isEqualTo(wish.span());
                        assertThat(lines.add(line)).isTrue();
                    }
                });
    }

    @Test
    void amountsHaveTheirDigitsAndAreUnlikeTheirNeighbours() {
        PadMade.Found found = found(PadMaker.make(PadWish.of(10, new Digits(2, 4)), 10, 3));

        assertThat(found.pad().leaves())
                .allSatisfy(leaf -> {
                    assertThat(leaf).doesNotHaveDuplicates();
                    assertThat(leaf)
                            .allMatch(amount -> amount.precision() >= 2 && amount.precision() <= 4);
                });
        assertThat(found.problems())
                .allSatisfy(
                        problem -> assertThat(((Column) problem).rows()).doesNotHaveDuplicates());
        Set<Integer> lengths = new HashSet<>();
        found.pad().leaves().forEach(leaf -> leaf.forEach(one -> lengths.add(one.precision())));
        assertThat(lengths).containsExactlyInAnyOrder(2, 3, 4);
    }

    @Test
    void allLinesAreTakenEquallyOften() {
        PadMade.Found found =
                found(PadMaker.make(PadWish.of(8, Digits.of(3)).withUnit("JPY"), 15, 1));

        for (int line = 1; line <= 5; line++) {
            int which = line;
            assertThat(
                            found.problems().stream()
                                    .map(problem -> (PadLine) problem.terms().told().orElseThrow())
                                    .filter(told -> told.line() == which))
                    .hasSize(3);
        }
        assertThat(found.problems())
                .allMatch(problem -> problem.terms().unit().equals(Optional.of("JPY")));
    }

    @Test
    void thereAreAmountsEvenWhereTheyMustRepeat() {
        assertThat(found(PadMaker.make(PadWish.of(15, Digits.of(1)), 30, 1)).problems())
                .hasSize(30);
    }

    @Test
    void aPadHasNoMoreProblemsThanLinesAndStarts() {
        PadWish wish = PadWish.of(8, Digits.of(2)).withLeaves(9);

        assertThat(found(PadMaker.make(wish, 10, 1)).problems()).hasSize(10);
        assertThat(PadMaker.make(wish, 11, 1))
                .isEqualTo(
                        new PadMade.Impossible(
                                wish,
                                new Reason.OnlySoMany(11, 10),
                                Optional.of(wish.withLeaves(10))));
        assertThat(found(PadMaker.make(wish.withLeaves(10), 11, 1)).problems()).hasSize(11);
    }

    @Test
    void whatIsOutOfRangeIsRefusedWithTheNearestThatWorks() {
        PadWish good = PadWish.of(8, Digits.of(2));
        assertRefused(good.withLines(0), Part.LINES, good.withLines(1));
        assertRefused(good.withLeaves(7), Part.LEAVES, good.withLeaves(8));
        assertRefused(
                PadWish.of(1, Digits.of(2)), Part.SPAN, PadWish.of(2, Digits.of(2)).withLeaves(3));
        assertRefused(PadWish.of(8, Digits.of(0)), Part.LEAST_DIGITS, PadWish.of(8, Digits.of(1)));
        assertRefused(
                PadWish.of(8, new Digits(3, 2)), Part.MOST_DIGITS, PadWish.of(8, Digits.of(3)));
        assertThat(PadMaker.make(good, 0, 1)).isInstanceOf(PadMade.Impossible.class);
    }

    @Test
    void theSameSeedMakesTheSamePad() {
        PadWish wish = PadWish.of(8, new Digits(2, 5));

        assertThat(PadMaker.make(wish, 15, 7)).isEqualTo(PadMaker.make(wish, 15, 7));
        assertThat(PadMaker.make(wish, 15, 8)).isNotEqualTo(PadMaker.make(wish, 15, 7));
    }

    private static void assertRefused(PadWish wish, Part part, PadWish nearest) {
        assertThat(PadMaker.make(wish, 1, 1))
                .isInstanceOfSatisfying(
                        PadMade.Impossible.class,
                        made -> {
                            assertThat(made.reason())
                                    .isInstanceOfSatisfying(
                                            Reason.OutOfRange.class,
                                            reason -> assertThat(reason.part()).isEqualTo(part));
                            assertThat(made.nearest()).contains(nearest);
                            assertThat(PadMaker.make(nearest, 1, 1))
                                    .isInstanceOf(PadMade.Found.class);
                        });
    }

    private static PadWish drawWish(Draw draw) {
        int span = draw.between(2, 15);
        int least = draw.between(1, 5);
        return new PadWish(
                draw.between(1, 7),
                span + draw.between(0, 20),
                span,
                new Digits(least, draw.between(least, 9)),
                Optional.empty());
    }

    private static PadMade.Found found(PadMade made) {
        assertThat(made).isInstanceOf(PadMade.Found.class);
        return (PadMade.Found) made;
    }
}
