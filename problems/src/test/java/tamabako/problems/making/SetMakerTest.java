package tamabako.problems.making;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;
import tamabako.problems.words.ProblemWords;

class SetMakerTest {

    /// JCCI grade 1: jitsu + hō = 11, jitsu 5-7, hō 4-6; hō + shō = 10, both 4-6. Source:
    /// shuzan.jp/kentei/shuzan; ranges tokicci.or.jp/kentei, ohdacci.com.
    private static final ProductWish FIRST_GRADE =
            ProductWish.inAll(11, new Digits(5, 7), new Digits(4, 6));

    private static final QuotientWish FIRST_GRADE_DIVISION =
            QuotientWish.inAll(10, new Digits(4, 6), new Digits(4, 6));

    @Test
    void productsOfAPaperHaveTheirDigitsAndAreRoundedAsItSays() {
        forSeeds(
                20,
                draw -> {
                    for (Numbers numbers : List.of(Numbers.plain(), Numbers.yen())) {
                        int places = numbers instanceof Numbers.Plain ? 3 : 0;
                        ProductWish wish = FIRST_GRADE.with(numbers).withUsualCustoms();
                        List<Problem> problems = found(Maker.make(wish, 10, draw.bits()));
                        int decimals = 0;
                        for (Problem problem : problems) {
                            Product product = (Product) problem;
                            String left = significant(product.multiplicand());
                            String right = significant(product.multiplier());
                            assertThat(left.length()).isBetween(5, 7);
                            assertThat(left.length() + right.length()).isEqualTo(11);
                            BigDecimal exact =
                                    product.multiplicand().multiply(product.multiplier());
                            assertThat(product.answer().value())
                                    .isEqualByComparingTo(
                                            exact.setScale(places, RoundingMode.HALF_UP));
                            decimals +=
                                    product.multiplicand().scale() + product.multiplier().scale()
                                                    > 0
                                            ? 1
                                            : 0;
                            assertThat(product.work(Setup.COMMON).outcome().answer())
                                    .isEqualByComparingTo(product.answer().value());
                        }
                        assertThat(decimals).isEqualTo(8);
                    }
                });
    }

    @Test
    void quotientsOfAPaperHaveTheirDigitsRoundedOrNot() {
        forSeeds(
                20,
                draw -> {
                    for (Numbers numbers : List.of(Numbers.plain(), Numbers.yen())) {
                        QuotientWish wish = FIRST_GRADE_DIVISION.with(numbers).withUsualCustoms();
                        for (Problem problem : found(Maker.make(wish, 10, draw.bits()))) {
                            Quotient quotient = (Quotient) problem;
                            int divisor = significant(quotient.divisor()).length();
                            assertThat(divisor).isBetween(4, 6);
                            BigDecimal answer = quotient.answer().value();
                            // A whole quotient may end in zeros, which count as digits.
                            int zeros =
                                    answer.scale() > 0
                                            ? 0
                                            : answer.precision() - significant(answer).length();
                            assertThat(divisor + significant(answer).length() + zeros)
                                    .isEqualTo(10);
                            assertThat(quotient.work(Setup.COMMON).outcome().answer())
                                    .isEqualByComparingTo(answer);
                        }
                    }
                });
    }

    @Test
    void theUsualCustomsAreKept() {
        forSeeds(
                20,
                draw -> {
                    List<Problem> products =
                            found(
                                    Maker.make(
                                            FIRST_GRADE.with(Numbers.plain()).withUsualCustoms(),
                                            20,
                                            draw.bits()));
                    List<Problem> quotients =
                            found(
                                    Maker.make(
                                            FIRST_GRADE_DIVISION
                                                    .with(Numbers.plain())
                                                    .withUsualCustoms(),
                                            20,
                                            draw.bits()));
                    for (List<Problem> set : List.of(products, quotients)) {
                        assertBothRoundings(set);
                        assertEvenDigits(set);
                        long zeros = set.stream().filter(SetMakerTest::hasInnerZero).count();
                        assertThat(zeros).isBetween(1L, 2L);
                        Map<Character, Integer> firsts = new TreeMap<>();
                        set.forEach(p ->
                                firsts.merge(
                                        significant(p.answer().value()).charAt(0),
                                        1,
                                        Integer::sum));
                        assertThat(firsts.values()).allMatch(times -> times <= 4);
                        assertThat(set.stream().filter(SetMakerTest::isShort)).isNotEmpty();
                        Map<Integer, Integer> splits = new TreeMap<>();
                        set.forEach(
                                p -> splits.merge(significant(first(p)).length(), 1, Integer::sum));
                        assertThat(splits).hasSize(3);
                        assertThat(splits.values()).allMatch(times -> times == 6 || times == 7);
                    }
                    assertThat(quotients.stream().filter(SetMakerTest::isFirstTrialRevised))
                            .hasSizeGreaterThanOrEqualTo(2);
                    long ones =
                            products.stream()
                                    .map(Product.class::cast)
                                    .flatMap(
                                            p -> List.of(p.multiplicand(), p.multiplier()).stream())
                                    .filter(number -> significant(number).startsWith("1"))
                                    .count();
                    assertThat(ones).isLessThanOrEqualTo(8);
                });
    }

    @Test
    void noAnswerIsHalfwayWhereThatIsAsked() {
        // One of two digits by one of one has ties enough to be met without the custom.
        ProductWish wish =
                ProductWish.inAll(5, Digits.of(3), Digits.of(2)).with(new Numbers.Plain(1, 100));

        assertThat(found(Maker.make(wish, 200, 1))).anyMatch(p -> Rounded.of(p) == Rounded.TIE);
        assertThat(found(Maker.make(wish.keeping(List.of(new Custom.NoTies())), 200, 1)))
                .noneMatch(SetMakerTest::isTie);
    }

    @Test
    void everyProductOfASplitIsEquallyLikely() {
        // 8 x 8 one-digit products, each drawn alone: chi squared of 63 degrees of freedom is above
        // 115 once in ten thousand.
        Map<Problem, Integer> counts = new HashMap<>();
        for (int seed = 0; seed < 6400; seed++) {
            counts.merge(
                    found(Maker.make(new ProductWish(1, 1), 1, seed)).getFirst(), 1, Integer::sum);
        }
        assertThat(counts).hasSize(64);
        assertThat(counts.values().stream().mapToDouble(n -> (n - 100.0) * (n - 100) / 100).sum())
                .isLessThan(115);
    }

    @Test
    void everySetThatKeepsACustomIsEquallyLikely() {
        // Sets of one quotient of one digit whose trial digit is revised: all of them, by their
        // traces, beside those that are made.
        Map<BigDecimal, Integer> counts = new HashMap<>();
        for (int divisor = 11; divisor <= 99; divisor++) {
            for (int quotient = 1; divisor % 10 != 0 && quotient <= 9; quotient++) {
                BigDecimal dividend = BigDecimal.valueOf((long) divisor * quotient);
                BigDecimal by = BigDecimal.valueOf(divisor);
                if (isFirstTrialRevised(new Quotient("", dividend, by, Terms.PLAIN))) {
                    counts.put(dividend.scaleByPowerOfTen(2).add(by), 0);
                }
            }
        }
        int there = counts.size();
        QuotientWish wish = new QuotientWish(2, 1).keeping(List.of(new Custom.Revised(1)));
        for (long seed = 0; seed < 40L * there; seed++) {
            Quotient made = (Quotient) found(Maker.make(wish, 1, seed)).getFirst();
            counts.merge(made.dividend().scaleByPowerOfTen(2).add(made.divisor()), 1, Integer::sum);
        }
        assertThat(counts).hasSize(there);
        double squares =
                counts.values().stream().mapToDouble(n -> (n - 40) * (n - 40) / 40.0).sum();
        // Four standard deviations of chi squared above its mean.
        assertThat(squares).isLessThan(there - 1 + 4 * Math.sqrt(2.0 * (there - 1)));
    }

    @Test
    void eachSplitComesAboutEquallyOften() {
        int[] lengths = new int[8];
        for (Problem problem : found(Maker.make(FIRST_GRADE, 3000, 5))) {
            lengths[significant(((Product) problem).multiplicand()).length()]++;
        }
        assertThat(lengths[5]).isBetween(900, 1100);
        assertThat(lengths[6]).isBetween(900, 1100);
        assertThat(lengths[7]).isBetween(900, 1100);
    }

    @Test
    void whatIsAvoidedIsNotMadeAgain() {
        List<Problem> first = found(Maker.make(new ProductWish(1, 1), 60, 1));
        Set<Problem> avoided = new HashSet<>();
        first.forEach(p ->
                avoided.add(
                        new Product(
                                "old",
                                ((Product) p).multiplicand().setScale(1),
                                ((Product) p).multiplier(),
                                Terms.PLAIN.withPoints(5))));

        List<Problem> rest = found(Maker.make(new ProductWish(1, 1), 4, 1, avoided));

        assertThat(rest.stream().map(p -> p.withId("")))
                .doesNotContainAnyElementsOf(first.stream().map(p -> p.withId("")).toList());
        assertThat(Maker.make(new ProductWish(1, 1), 5, 1, avoided))
                .isInstanceOfSatisfying(
                        Made.Impossible.class,
                        made -> assertThat(made.reason()).isEqualTo(new Reason.OnlySoMany(5, 4)));
        assertThat(Maker.make(new QuotientWish(1, 1), 70, 1, avoided))
                .isInstanceOf(Made.Found.class);
    }

    @Test
    void columnsToAvoidAreNotMadeAgain() {
        ColumnWish wish = ColumnWish.of(3, 1).allowing(Technique.DIRECT);
        List<Problem> first = found(Maker.make(wish, 20, 1));

        List<Problem> next = found(Maker.make(wish, 14, 1, Set.copyOf(first)));

        assertThat(next.stream().map(p -> ((Column) p).rows()))
                .doesNotContainAnyElementsOf(first.stream().map(p -> ((Column) p).rows()).toList());
    }

    @Test
    void allQuotientsAndRootsThereAreAreMadeAndNotOneMore() {
        // 2 to 9 by quotients of 1 to 9.
        assertThat(found(Maker.make(new QuotientWish(1, 1), 72, 1))).hasSize(72);
        assertOnly(Maker.make(new QuotientWish(1, 1), 73, 1), 72);
        // Roots of 2 to 9, and of 11 to 99 without 20, 30 ... 90.
        RootWish roots = new RootWish(2, new Digits(1, 2), OptionalInt.empty());
        assertThat(found(Maker.make(roots, 89, 1))).hasSize(89);
        assertOnly(Maker.make(roots, 90, 1), 89);
        // Radicands of 1 to 99 that are no square.
        RootWish rounded = new RootWish(2, 1).to(3);
        assertThat(found(Maker.make(rounded, 90, 1))).hasSize(90);
        assertOnly(Maker.make(rounded, 91, 1), 90);
        assertOnly(Maker.make(new RootWish(3, 2).to(3), 9999, 1), 9999);
    }

    @Test
    void rootsAreRoundedToTheirPlaces() {
        for (int degree = 2; degree <= 3; degree++) {
            for (Problem problem :
                    found(
                            Maker.make(
                                    new RootWish(degree, new Digits(1, 3), OptionalInt.of(2)),
                                    40,
                                    3))) {
                Root root = (Root) problem;
                BigDecimal answer = root.answer().value();
                BigDecimal half = new BigDecimal("0.005");
                assertThat(answer.subtract(half).pow(degree)).isLessThan(root.of());
                assertThat(answer.add(half).pow(degree)).isGreaterThan(root.of());
                assertThat(root.work(Setup.COMMON).outcome().answer()).isEqualByComparingTo(answer);
            }
        }
    }

    @Test
    void everyProblemWithDecimalsFitsTheLongestFrame() {
        List<Problem> problems = new ArrayList<>();
        for (Numbers numbers :
                List.of(new Numbers.Plain(6, 100), new Numbers.Amounts("EUR", 100))) {
            problems.addAll(found(Maker.make(new ProductWish(8, 8).with(numbers), 300, 1)));
            problems.addAll(found(Maker.make(new QuotientWish(6, 8).with(numbers), 300, 1)));
        }
        problems.addAll(found(Maker.make(new RootWish(2, 5).to(6), 100, 1)));
        problems.addAll(found(Maker.make(new RootWish(3, 1).to(4), 100, 1)));
        problems.addAll(found(Maker.make(new RootWish(3, 4).to(1), 100, 1)));
        for (Problem problem : problems) {
            assertThat(problem.work(Setup.COMMON).outcome().answer())
                    .isEqualByComparingTo(problem.answer().value());
        }
    }

    @Test
    void whatCannotBeIsRefusedWithTheNearestThatWorks() {
        StringBuilder said = new StringBuilder();
        Map<String, Made> made = new LinkedHashMap<>();
        made.put(
                "sum of digits",
                Maker.make(ProductWish.inAll(14, new Digits(5, 7), new Digits(4, 6)), 10, 1));
        made.put(
                "range turned round",
                Maker.make(ProductWish.inAll(5, new Digits(3, 2), Digits.of(2)), 10, 1));
        made.put(
                "decimals too long",
                Maker.make(new ProductWish(9, 4).with(Numbers.plain()), 10, 1));
        made.put(
                "places", Maker.make(new QuotientWish(3, 3).with(new Numbers.Plain(7, 50)), 10, 1));
        made.put(
                "share",
                Maker.make(new QuotientWish(3, 3).with(new Numbers.Amounts("JPY", 120)), 10, 1));
        made.put(
                "zeros",
                Maker.make(
                        new ProductWish(2, 2).keeping(List.of(new Custom.InnerZeros(1, 2))),
                        10,
                        1));
        made.put(
                "zeros of a quotient",
                Maker.make(
                        new QuotientWish(3, 2).keeping(List.of(new Custom.InnerZeros(1, 2))),
                        10,
                        1));
        made.put(
                "more zeros than problems",
                Maker.make(
                        new ProductWish(3, 3).keeping(List.of(new Custom.InnerZeros(11, 12))),
                        10,
                        1));
        made.put(
                "revised",
                Maker.make(new QuotientWish(1, 3).keeping(List.of(new Custom.Revised(1))), 10, 1));
        made.put(
                "whole and rounded",
                Maker.make(
                        new ProductWish(3, 3).keeping(List.of(new Custom.BothRoundings(1, 1))),
                        10,
                        1));
        made.put(
                "one problem both ways",
                Maker.make(
                        new ProductWish(3, 3)
                                .with(Numbers.plain())
                                .keeping(List.of(new Custom.BothRoundings(1, 1))),
                        1,
                        1));
        made.put(
                "short amounts",
                Maker.make(
                        new ProductWish(3, 3)
                                .with(Numbers.yen())
                                .keeping(List.of(new Custom.SomeShort())),
                        10,
                        1));
        made.put("root places", Maker.make(new RootWish(2, 3).to(9), 10, 1));
        made.put("cube root too long", Maker.make(new RootWish(3, 4).to(2), 10, 1));
        made.forEach((what, one) -> {
            assertThat(one).as(what).isInstanceOf(Made.Impossible.class);
            Made.Impossible impossible = (Made.Impossible) one;
            Wish nearest = impossible.nearest().orElseThrow();
            int count = what.equals("one problem both ways") ? 1 : 10;
            assertThat(Maker.make(nearest, count, 1)).as(what).isInstanceOf(Made.Found.class);
            said.append(what).append('\n');
            said.append(ProblemWords.of(Locale.ENGLISH).say(impossible.reason())).append('\n');
            said.append(ProblemWords.of(Locale.JAPANESE).say(impossible.reason())).append('\n');
            said.append("  -> ").append(nearest).append('\n');
        });
        assertGolden("kinds-refused.txt", said.toString());
    }

    @Test
    void whatIsNotFoundIsNotCalledImpossible() {
        // Of the 64 products of 2 to 9, 17 begin with 1: 13 at least of any 60, and 12 may.
        ProductWish wish =
                new ProductWish(1, 1).keeping(List.of(new Custom.DifferentFirstDigits()));

        assertThat(Maker.make(wish, 60, 1))
                .isEqualTo(
                        new Made.NotFound(
                                wish,
                                new Reason.CustomNotMet(
                                        new Custom.DifferentFirstDigits(), SetMaker.MOST_SETS)));
    }

    @Test
    void partsThatAreOutOfRangeAreNamed() {
        assertThat(
                        Maker.make(
                                FIRST_GRADE
                                        .with(Numbers.plain())
                                        .keeping(List.of(new Custom.BothRoundings(-1, 1))),
                                10,
                                1))
                .isInstanceOfSatisfying(
                        Made.Impossible.class,
                        made ->
                                assertThat(made.reason())
                                        .isEqualTo(
                                                new Reason.OutOfRange(Part.ROUNDINGS, -1, 0, 10)));
    }

    @Test
    void paperSetsAreTheSameForEver() {
        StringBuilder made = new StringBuilder();
        for (Wish wish :
                List.of(
                        FIRST_GRADE.with(Numbers.plain()).withUsualCustoms(),
                        FIRST_GRADE.with(Numbers.yen()).withUsualCustoms(),
                        FIRST_GRADE_DIVISION.with(Numbers.plain()).withUsualCustoms(),
                        FIRST_GRADE_DIVISION.with(Numbers.yen()).withUsualCustoms(),
                        new RootWish(2, 2).to(3))) {
            for (Problem problem : found(Maker.make(wish, 10, 2026))) {
                made.append(ProblemJson.line(problem))
                        .append(" = ")
                        .append(problem.answer().figures())
                        .append('\n');
            }
        }
        assertGolden("paper-sets.txt", made.toString());
    }

    private static void assertOnly(Made made, int there) {
        if (made instanceof Made.Impossible(_, Reason reason, Optional<Wish> _)) {
            assertThat(reason).isEqualTo(new Reason.OnlySoMany(there + 1, there));
        } else {
            // As many as may be made at once are fewer than there are.
            assertThat(found(made)).hasSize(there);
        }
    }

    private static void assertBothRoundings(List<Problem> set) {
        assertThat(set).noneMatch(SetMakerTest::isTie);
        assertThat(set.stream().map(p -> p.answer().value().multiply(under(p)).compareTo(over(p))))
                .contains(1)
                .contains(-1);
    }

    private static void assertEvenDigits(List<Problem> set) {
        int[] counts = new int[10];
        for (Problem problem : set) {
            BigDecimal by =
                    problem instanceof Product p ? p.multiplier() : problem.answer().value();
            significant(by).chars().forEach(figure -> counts[figure - '0']++);
        }
        int all = 0;
        for (int digit = 2; digit <= 9; digit++) {
            all += counts[digit];
        }
        for (int digit = 2; digit <= 9; digit++) {
            assertThat(Math.abs(counts[digit] - all / 8.0))
                    .isLessThanOrEqualTo(Math.max(2, all / 16.0));
        }
    }

    private static boolean isTie(Problem problem) {
        int places = problem.terms().places().orElse(0);
        BigDecimal off =
                problem.answer().value().multiply(under(problem)).subtract(over(problem)).abs();
        return off.multiply(new BigDecimal("2").scaleByPowerOfTen(places)).compareTo(under(problem))
                == 0;
    }

    private static BigDecimal over(Problem problem) {
        return problem instanceof Product p
                ? p.multiplicand().multiply(p.multiplier())
                : ((Quotient) problem).dividend();
    }

    private static BigDecimal under(Problem problem) {
        return problem instanceof Quotient q ? q.divisor() : BigDecimal.ONE;
    }

    private static BigDecimal first(Problem problem) {
        return problem instanceof Product p ? p.multiplicand() : ((Quotient) problem).divisor();
    }

    private static boolean isShort(Problem problem) {
        boolean exact =
                problem.answer().value().multiply(under(problem)).compareTo(over(problem)) == 0;
        return exact && problem.answer().value().scale() < 3;
    }

    private static boolean hasInnerZero(Problem problem) {
        return problem instanceof Product p
                ? (significant(p.multiplicand()) + significant(p.multiplier())).contains("0")
                : significant(problem.answer().value()).contains("0");
    }

    /// Whether, in the trace, a revision comes before the second trial digit.
    private static boolean isFirstTrialRevised(Problem problem) {
        int trials = 0;
        for (Step step : problem.work(Setup.COMMON).trace().steps()) {
            trials += step.cause() instanceof Cause.TrialDigit ? 1 : 0;
            if (trials == 1 && step.cause() instanceof Cause.RevisedDown) {
                return true;
            }
        }
        return false;
    }

    private static String significant(BigDecimal number) {
        return number.toPlainString().replace(".", "").replaceAll("^0+|0+$", "");
    }

    private static List<Problem> found(Made made) {
        assertThat(made).isInstanceOf(Made.Found.class);
        return ((Made.Found) made).problems();
    }
}
