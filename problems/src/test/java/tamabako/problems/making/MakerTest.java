package tamabako.problems.making;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.frame.Technique.DIRECT;
import static tamabako.frame.Technique.FIVE_COMPLEMENT;
import static tamabako.frame.Technique.TEN_COMPLEMENT;
import static tamabako.frame.Technique.TEN_WITH_FIVE;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.making.Made.Reason;
import tamabako.problems.words.ProblemWords;
import tamabako.testkit.Draw;

class MakerTest {

    @Test
    void whatIsMadeGrantsTheWish() {
        forSeeds(
                400,
                draw -> {
                    ColumnWish wish = drawWish(draw);
                    if (Maker.make(wish, 5, draw.bits()) instanceof Made.Found found) {
                        assertThat(found.problems()).hasSize(5);
                        found.problems().forEach(problem -> assertGranted(wish, (Column) problem));
                        assertNoTwoAlike(found.problems());
                    }
                });
    }

    @Test
    void mostWishesAreGranted() {
        int[] found = new int[1];
        forSeeds(
                200,
                draw -> found[0] += Maker.make(drawWish(draw), 1, 0) instanceof Made.Found ? 1 : 0);

        // Without this, a maker that finds nothing would pass the property above.
        assertThat(found[0]).isGreaterThan(System.getProperty("seed") == null ? 100 : -1);
    }

    @Test
    void beginnersColumnsUseWhatWasTaughtAndNoMore() {
        List<Set<Technique>> taught =
                List.of(
                        EnumSet.of(DIRECT),
                        EnumSet.of(DIRECT, FIVE_COMPLEMENT),
                        EnumSet.of(DIRECT, TEN_COMPLEMENT),
                        EnumSet.allOf(Technique.class));
        for (Set<Technique> allowed : taught) {
            for (Technique focus : allowed) {
                ColumnWish wish =
                        ColumnWish.of(5, 2)
                                .withMinusRows(2)
                                .allowing(allowed)
                                .requiring(focus)
                                .withCustomsOfPractice();

                List<Problem> problems = found(Maker.make(wish, 20, 3));

                problems.forEach(problem -> assertGranted(wish, (Column) problem));
                assertNoTwoAlike(problems);
                assertThat(problems).allSatisfy(p -> assertThat(differentRows(p)).isEqualTo(5));
            }
        }
    }

    @Test
    void tenDirectRowsOfTwoDigitsNeedMinusRows() {
        ColumnWish wish = ColumnWish.of(10, 2).allowing(DIRECT);

        // Ten tens digits of 1 or more pass 9 without a carry, whatever they are.
        assertThat(Maker.make(wish, 1, 0))
                .isInstanceOfSatisfying(
                        Made.Impossible.class,
                        made -> {
                            assertThat(made.reason()).isInstanceOf(Reason.Clash.class);
                            assertThat(made.nearest()).contains(wish.withMinusRows(1));
                        });
        assertThat(Maker.make(wish.withMinusRows(4), 100, 0)).isInstanceOf(Made.Found.class);
        assertThat(Maker.make(wish.withDigits(9, 9), 1, 0)).isInstanceOf(Made.Impossible.class);
    }

    @Test
    void impossibleIsSaidOnlyWhereNoColumnIsWrittenOut() {
        forSeeds(
                60,
                draw -> {
                    Set<Technique> allowed = Columns.drawTechniques(draw);
                    allowed.add(draw.oneOf(List.of(Technique.values())));
                    Set<Technique> required = Columns.drawTechniques(draw);
                    required.retainAll(allowed);
                    int rows = draw.between(2, 3);
                    ColumnWish wish =
                            ColumnWish.of(rows, 1)
                                    .withMinusRows(draw.between(0, rows - 1))
                                    .allowing(allowed)
                                    .requiring(required);

                    Made made = Maker.make(wish, 1, 0);

                    assertThat(made instanceof Made.Found).isEqualTo(anyByHand(wish));
                    assertThat(made).isNotInstanceOf(Made.NotFound.class);
                    if (made instanceof Made.Impossible(_, _, var nearest)) {
                        assertThat(Maker.make(nearest.orElseThrow(), 1, 0))
                                .isInstanceOf(Made.Found.class);
                    }
                });
    }

    @Test
    void allProblemsThereAreAreMadeAndNotOneMore() {
        ColumnWish wish = ColumnWish.of(3, 1).allowing(DIRECT);
        int there = countByHand(wish);

        assertNoTwoAlike(found(Maker.make(wish, there, 9)));
        assertThat(Maker.make(wish, there + 1, 9))
                .isInstanceOfSatisfying(
                        Made.Impossible.class,
                        made ->
                                assertThat(made.reason())
                                        .isEqualTo(new Reason.OnlySoMany(there + 1, there)));
        // 2 to 9 times 2 to 9.
        assertNoTwoAlike(found(Maker.make(new ProductWish(1, 1), 64, 1)));
        assertThat(Maker.make(new ProductWish(1, 1), 65, 1)).isInstanceOf(Made.Impossible.class);
    }

    @Test
    void rowsRepeatOnlyWhereTheyMust() {
        // Twelve rows of nine digits: at least three are like others.
        List<Problem> crowded =
                found(Maker.make(ColumnWish.of(12, 1).withCustomsOfPractice(), 10, 4));
        assertThat(crowded).allSatisfy(p -> assertThat(differentRows(p)).isEqualTo(9));
        // Without a carry the four rows come to 9 at most, and 1 + 2 + 3 + 4 is 10.
        ColumnWish noFourDifferent =
                ColumnWish.of(4, 1).allowing(DIRECT, FIVE_COMPLEMENT).withCustomsOfPractice();
        assertThat(found(Maker.make(noFourDifferent, 20, 4)))
                .allSatisfy(p -> assertThat(differentRows(p)).isEqualTo(3));
        List<Problem> roomy =
                found(
                        Maker.make(
                                ColumnWish.of(10, 2).withMinusRows(4).withCustomsOfPractice(),
                                100,
                                4));
        assertThat(roomy).allSatisfy(p -> assertThat(differentRows(p)).isEqualTo(10));
    }

    @Test
    void smallColumnsDoNotEndWithAMinusRowWhereThatCanBe() {
        for (Problem problem :
                found(
                        Maker.make(
                                ColumnWish.of(5, 2).withMinusRows(2).withCustomsOfPractice(),
                                50,
                                5))) {
            assertThat(((Column) problem).rows().getLast().signum()).isPositive();
        }
        // All rows after the first are taken, so the last is.
        ColumnWish all = ColumnWish.of(3, 1).withMinusRows(2).withCustomsOfPractice();
        assertThat(found(Maker.make(all, 5, 5))).hasSize(5);
    }

    @Test
    void totalsGoBelowZeroOnlyWhereAsked() {
        ColumnWish wish = ColumnWish.of(6, 4).withMinusRows(3);

        assertThat(found(Maker.make(wish, 50, 6)))
                .noneMatch(p -> Columns.goesBelowZero(((Column) p).rows()));
        assertThat(found(Maker.make(wish.goingBelowZero(true), 50, 6)))
                .anyMatch(p -> Columns.goesBelowZero(((Column) p).rows()));
    }

    @Test
    void productsQuotientsAndRootsHaveTheirDigitsAndAreExact() {
        for (Problem problem : found(Maker.make(new ProductWish(5, 3), 100, 7))) {
            Product product = (Product) problem;
            assertFactor(product.multiplicand(), 5);
            assertFactor(product.multiplier(), 3);
        }
        for (Problem problem : found(Maker.make(new QuotientWish(3, 4), 100, 7))) {
            Quotient quotient = (Quotient) problem;
            assertFactor(quotient.divisor(), 3);
            assertThat(quotient.answer().value().precision()).isEqualTo(4);
            assertThat(quotient.answer().remainder().orElseThrow()).isZero();
        }
        for (Problem problem : found(Maker.make(new RootWish(3, 2), 50, 7))) {
            Root root = (Root) problem;
            assertFactor(root.answer().value(), 2);
            assertThat(root.answer().value().pow(3)).isEqualByComparingTo(root.of());
        }
    }

    @Test
    void theSameSeedMakesTheSameProblemsForEver() {
        StringBuilder made = new StringBuilder();
        List<Wish> wishes =
                List.of(
                        ColumnWish.of(5, 1).withMinusRows(2).allowing(DIRECT),
                        ColumnWish.of(4, 2)
                                .allowing(DIRECT, FIVE_COMPLEMENT)
                                .requiring(FIVE_COMPLEMENT),
                        ColumnWish.of(10, 10).withMinusRows(3).goingBelowZero(true),
                        ColumnWish.of(10, 5).withMinusRows(4).allowing(DIRECT),
                        ColumnWish.of(7, 4).withDigits(3, 4).withPlaces(2),
                        new ProductWish(6, 5),
                        new QuotientWish(4, 6),
                        new RootWish(2, 3),
                        new RootWish(3, 2));
        for (Wish wish : wishes) {
            made.append(wish).append('\n');
            for (Problem problem : found(Maker.make(wish, 3, 2026))) {
                made.append(ProblemJson.line(problem)).append('\n');
            }
        }

        assertGolden("made.txt", made.toString());
    }

    @Test
    void moreProblemsFromASeedBeginWithTheSameOnes() {
        ColumnWish wish = ColumnWish.of(5, 3).withMinusRows(1);

        assertThat(found(Maker.make(wish, 20, 8)).subList(0, 10))
                .isEqualTo(found(Maker.make(wish, 10, 8)));
        assertThat(found(Maker.make(wish, 10, 9))).isNotEqualTo(found(Maker.make(wish, 10, 8)));
    }

    @Test
    void whyAWishIsNotGrantedIsSaid() {
        StringBuilder said = new StringBuilder();
        List<Made> made =
                List.of(
                        Maker.make(ColumnWish.of(5, 1), 0, 0),
                        Maker.make(ColumnWish.of(1, 1), 1, 0),
                        Maker.make(ColumnWish.of(5, 40), 1, 0),
                        Maker.make(ColumnWish.of(5, 2).withDigits(3, 2), 1, 0),
                        Maker.make(ColumnWish.of(5, 2).withPlaces(2), 1, 0),
                        Maker.make(ColumnWish.of(5, 2).withMinusRows(5), 1, 0),
                        Maker.make(ColumnWish.of(5, 2).allowing(), 1, 0),
                        Maker.make(
                                ColumnWish.of(5, 2)
                                        .allowing(DIRECT)
                                        .requiring(TEN_COMPLEMENT, TEN_WITH_FIVE),
                                1,
                                0),
                        Maker.make(ColumnWish.of(5, 1).allowing(FIVE_COMPLEMENT), 1, 0),
                        Maker.make(
                                ColumnWish.of(2, 1)
                                        .allowing(DIRECT, FIVE_COMPLEMENT)
                                        .requiring(DIRECT, FIVE_COMPLEMENT),
                                1,
                                0),
                        Maker.make(ColumnWish.of(3, 1).allowing(DIRECT), 100, 0),
                        Maker.make(
                                ColumnWish.of(30, 6).allowing(FIVE_COMPLEMENT, TEN_WITH_FIVE),
                                1,
                                0),
                        Maker.make(new ProductWish(16, 1), 1, 0),
                        Maker.make(new QuotientWish(1, 0), 1, 0),
                        Maker.make(new RootWish(4, 2), 1, 0),
                        Maker.make(new RootWish(3, 1), 9, 0));
        for (Made one : made) {
            Made.Reason reason =
                    switch (one) {
                        case Made.Impossible(_, Made.Reason why, _) -> why;
                        case Made.NotFound(_, Made.Reason why) -> why;
                        case Made.Found _ -> throw new AssertionError("Found: " + one);
                    };
            said.append(ProblemWords.of(Locale.ENGLISH).say(reason)).append('\n');
            said.append(ProblemWords.of(Locale.JAPANESE).say(reason)).append('\n');
            if (one instanceof Made.Impossible(_, _, var nearest)) {
                nearest.ifPresent(wish -> said.append("  -> ").append(wish).append('\n'));
            }
        }

        assertGolden("not-made.txt", said.toString());
    }

    private static ColumnWish drawWish(Draw draw) {
        int rows = draw.between(2, 8);
        int most = draw.between(1, 5);
        int least = draw.between(1, most);
        Set<Technique> allowed = Columns.drawTechniques(draw);
        allowed.add(DIRECT);
        Set<Technique> required = EnumSet.noneOf(Technique.class);
        if (draw.chance(1, 2)) {
            required.add(draw.oneOf(List.copyOf(allowed)));
        }
        return ColumnWish.of(rows, 1)
                .withDigits(least, most)
                .withMinusRows(draw.between(0, (rows - 1) / 2))
                .withPlaces(draw.between(0, least - 1))
                .allowing(allowed)
                .requiring(required)
                .goingBelowZero(draw.chance(1, 4));
    }

    private static void assertGranted(ColumnWish wish, Column column) {
        List<BigDecimal> rows = column.rows();
        assertThat(rows).hasSize(wish.rows());
        assertThat(rows)
                .allSatisfy(row -> {
                    assertThat(row.precision())
                            .isBetween(
                                    wish.shape().lengths().least(), wish.shape().lengths().most());
                    assertThat(row.scale()).isEqualTo(wish.shape().places());
                    assertThat(row.signum()).isNotZero();
                });
        assertThat(rows.stream().filter(row -> row.signum() < 0))
                .hasSize(wish.signs().leastMinus());
        assertThat(rows.getFirst().signum()).isPositive();
        assertThat(wish.allowed()).containsAll(Columns.techniques(rows));
        assertThat(Columns.techniques(rows)).containsAll(wish.required());
        assertThat(wish.mayGoBelowZero() || !Columns.goesBelowZero(rows)).isTrue();
    }

    private static void assertFactor(BigDecimal factor, int digits) {
        assertThat(factor.scale()).isZero();
        assertThat(factor.precision()).isEqualTo(digits);
        assertThat(factor.remainder(BigDecimal.TEN).signum()).isNotZero();
        assertThat(factor).isNotEqualByComparingTo(BigDecimal.ONE);
    }

    private static void assertNoTwoAlike(List<Problem> problems) {
        assertThat(problems.stream().map(problem -> problem.withId(""))).doesNotHaveDuplicates();
        for (int i = 0; i < problems.size(); i++) {
            assertThat(problems.get(i).id()).isEqualTo(Integer.toString(i + 1));
        }
    }

    private static int differentRows(Problem problem) {
        Set<BigDecimal> sizes = new HashSet<>();
        ((Column) problem).rows().forEach(row -> sizes.add(row.abs()));
        return sizes.size();
    }

    private static boolean anyByHand(ColumnWish wish) {
        return countByHand(wish) > 0;
    }

    /// How many columns of one-digit rows grant the wish, each worked by hand.
    private static int countByHand(ColumnWish wish) {
        return countByHand(wish, List.of());
    }

    private static int countByHand(ColumnWish wish, List<BigDecimal> rows) {
        if (rows.size() == wish.rows()) {
            boolean granted =
                    rows.stream().filter(row -> row.signum() < 0).count()
                                    == wish.signs().leastMinus()
                            && Columns.techniques(rows).containsAll(wish.required());
            return granted ? 1 : 0;
        }
        int count = 0;
        for (int row = -9; row <= 9; row++) {
            List<BigDecimal> longer = new ArrayList<>(rows);
            longer.add(BigDecimal.valueOf(row));
            boolean goesOn =
                    row != 0
                            && longer.getFirst().signum() > 0
                            && !Columns.goesBelowZero(longer)
                            && wish.allowed().containsAll(Columns.techniques(longer));
            count += goesOn ? countByHand(wish, longer) : 0;
        }
        return count;
    }

    private static List<Problem> found(Made made) {
        assertThat(made).isInstanceOf(Made.Found.class);
        return ((Made.Found) made).problems();
    }
}
