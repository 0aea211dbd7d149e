package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

class SlipFinderTest {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    /// Sources: ga-byō = a soroban school's page on が病, January 2019; hosū = the same school on
    /// misread complements, December 2018 (the frame 9,940 of 10,000 read -59, -50, -5 or -6
    /// instead of -60); Fukushima = a school's written test, 1983 (carries and borrows dropped, 21
    /// for 201); modoshizan = 84 by 28 with the trial digit 4 left standing; list = common
    /// practice, no published source (rows skipped or doubled, 69 for 96, plus for minus,
    /// neighbouring rod, five-bead left on).
    @ParameterizedTest
    @CsvSource({
        "take 4 by the wrong complement, 12 -4, 6, ten-complement-wrong",
        "take 4 by the wrong complement, 13 -4, 7, ten-complement-wrong",
        "ga-byō, 38*2, 616, product-misplaced",
        "hosū, 1234 -1294, -59, complement-misread",
        "hosū, 1234 -1294, -50, complement-misread",
        "hosū, 1234 -1294, -5, complement-misread",
        "hosū, 1234 -1294, -6, complement-misread",
        "hosū without the minus, 1234 -1294, 60, complement-misread",
        "hosū not taken, 1234 -1294, 9940, complement-misread",
        "partial product one rod right, 312*24, 2088, product-misplaced",
        "Fukushima: second row of products not shifted, 312*24, 1872, product-misplaced",
        "Fukushima with a remainder, 1408/7, 21 r 1, quotient-place-missed",
        "an empty place too many, 147/7, 201, quotient-place-missed",
        "keta-chigai to the right, 314 96 205, 528, row-on-neighbour-rod",
        "plus for minus after hiite wa, 614 -96 -205, 723, sign-missed",
        "modoshizan, 84/28, 4, quotient-off-by-one",
        "modoshizan, 84/28, 2, quotient-off-by-one",
        "modoshizan in the middle, 1225/35, 29, quotient-off-by-one",
        "Fukushima, 1407/7, 21, quotient-place-missed",
        "Fukushima, 34 78, 12, carry-left-out",
        "Fukushima, 523 -78, 455, borrow-left-out",
        "list, 314 96 205, 588, digits-swapped-reading",
        "list, 314 96 205, 519, row-skipped",
        "list, 314 96 205, 711, row-twice",
        "list, 614 -96 205, 915, sign-missed",
        "list, 314 96 205, 1479, row-on-neighbour-rod",
        "list, 12 61 23, 636, digit-on-neighbour-rod",
        "list, 21 32 15, 63, five-bead",
        "list, 1234 5111, 6435, written-swapped",
        "list, 31 42 11, 840, written-length",
        "Fukushima: three borrows running, 31005 -12347, 18758, borrow-left-out",
        "list: 1 read as 7, 314 96 205, 675, digit-misread",
        "list: 0 read as 6, 304 96 212, 672, digit-misread",
        "list: point misplaced, 3.14 9.62 20.51, 3.327, written-length",
    })
    void anErrorThatTeachersNameIsNamedFirst(
            String source, String sum, String written, String kind) {
        Finding finding = FINDER.find(problem(sum), written);

        assertThat(finding.slips().getFirst().kind().word()).as(source).isEqualTo(kind);
    }

    /// A bead that slipped leaves the answer one too large or too small on its rod, which a carry
    /// or borrow left out does as well; the other errors of this list share their differences too.
    /// Sources as above.
    @ParameterizedTest
    @CsvSource({
        "list: bead slipped, 21 32 15, 69, one-bead",
        "list: bead slipped, 21 32 15, 67, one-bead",
        "list: five-bead left on, 21 32 15, 73, five-bead",
        "partial product left out, 38*24, 792, product-skipped",
        "partial product misplaced, 38*24, 1992, product-misplaced",
        "table, 7*8, 54, table-slip",
        "Fukushima: product left out, 312*24, 6240, product-skipped",
        "five-bead of the tens left on, 210 320 150, 730, five-bead",
    })
    void anErrorThatSharesItsDifferenceIsNamedFirstOrSecond(
            String source, String sum, String written, String kind) {
        Finding finding = FINDER.find(problem(sum), written);

        assertThat(finding.slips().subList(0, 2))
                .as(source)
                .extracting(slip -> slip.kind().word())
                .contains(kind);
    }

    @ParameterizedTest
    @CsvSource({
        "34 78, 12, CARRY_LEFT_OUT, 2, 2",
        "523 -78, 455, BORROW_LEFT_OUT, 2, 1",
        "13 -4, 7, TEN_COMPLEMENT_DIGIT, 2, 0",
        "314 96 205, 588, DIGITS_SWAPPED, 2, 0",
        "3.14 9.62 20.51, 30.13, ROW_SKIPPED, 1, -100",
        "3.14 9.62 20.51, 33.24, WRITTEN_DIGIT, -100, -2",
        "3.14 9.62 20.51, 3.327, WRITTEN_POINT_LEFT, -100, -100",
        "31.4 -9.7 20.5, 61.6, MINUS_READ_AS_PLUS, 2, -100",
        "50 -95 118, 173, LOAN_NOT_RETURNED, 3, 2",
    })
    void theSlipNamedFirstHasItsWayRowAndRod(
            String sum, String written, Way way, int row, int rod) {
        Slip first = FINDER.find(problem(sum), written).slips().getFirst();

        assertThat(first.way()).isEqualTo(way);
        assertThat(first.row().orElse(-100)).isEqualTo(row);
        assertThat(first.rod().orElse(-100)).isEqualTo(rod);
    }

    @ParameterizedTest
    @CsvSource({"28, ROOT_DIGIT_OFF", "72, WRITTEN_SWAPPED", "270, WRITTEN_POINT_RIGHT"})
    void aRootHasTheSlipsThatItsAnswerShows(String written, Way way) {
        Root root = new Root("1", 2, new BigDecimal(729), Terms.PLAIN);

        assertThat(FINDER.find(root, written).slips().getFirst().way()).isEqualTo(way);
    }

    @Test
    void aRightValueHasNoSlipsWhateverItsForm() {
        for (String written : List.of("1180", "1,180", "１１８０", "11,80", "1180.0")) {
            Finding finding = FINDER.find(problem("357 823"), written);

            assertThat(finding).as(written).isEqualTo(Finding.right("1180"));
            assertThat(finding.verdict()).isEqualTo(Finding.Verdict.RIGHT);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "34 78, 'no idea'",
        "34 78, ''",
        "34 78, 9276351",
        "34 78, 0.0001",
        "34 78, 123456789012345678901234567890",
        "100/7, 14 r 3",
        "12345678901234567 1, 12345678901234560",
        "9999999999999999 9999999999999999 -9999999999999999, 1",
    })
    void whatNoSlipLeadsToIsNotExplained(String sum, String written) {
        Finding finding = FINDER.find(problem(sum), written);

        assertThat(finding.explained()).isZero();
        assertThat(finding.verdict()).isEqualTo(Finding.Verdict.NONE_KNOWN);
        assertThat(finding.slips()).extracting(Slip::kind).containsExactly(SlipKind.NONE_KNOWN);
        assertThat(finding.slips().getFirst().share()).isEqualTo(1);
        assertThat(finding.cannotTell()).isEmpty();
    }

    @Test
    void aKindIsNamedAloneOnlyIfItStandsOut() {
        Finding likely = FINDER.find(problem("34 78"), "12");
        Finding open = FINDER.find(problem("84/28"), "2");

        assertThat(likely.verdict()).isEqualTo(Finding.Verdict.LIKELY);
        assertThat(likely.cannotTell()).isEmpty();
        assertThat(open.verdict()).isEqualTo(Finding.Verdict.CANNOT_TELL);
        double named =
                open.slips().stream()
                        .filter(slip -> open.cannotTell().contains(slip.kind()))
                        .mapToDouble(Slip::share)
                        .sum();
        double last = open.slips().get(open.cannotTell().size() - 1).share();
        assertThat(named).isGreaterThanOrEqualTo(0.9);
        assertThat(named - last).isLessThan(0.9);
    }

    @Test
    void thePupilsOwnRatesChangeTheRanking() {
        SlipFinder careless = new SlipFinder(Rates.shipped().with(SlipKind.ONE_BEAD, 0.05));

        SlipKind common = FINDER.find(problem("34 78"), "12").slips().getFirst().kind();
        SlipKind own = careless.find(problem("34 78"), "12").slips().getFirst().kind();

        assertThat(common).isEqualTo(SlipKind.CARRY_LEFT_OUT);
        assertThat(own).isEqualTo(SlipKind.ONE_BEAD);
    }

    @Test
    void aRateThatIsNoRateIsRefused() {
        for (double rate : new double[] {0, 1, -0.1, Double.NaN}) {
            assertThatThrownBy(() -> Rates.shipped().with(SlipKind.ONE_BEAD, rate))
                    .hasMessageContaining("one-bead");
        }
    }

    /// Bound: two slips at once explain one random answer in forty at this length.
    @Test
    void randomAnswersAreHardlyEverExplained() {
        int[] explained = new int[1];
        forSeeds(
                1_000,
                draw -> {
                    BigDecimal[] rows = new BigDecimal[10];
                    Arrays.setAll(rows, i -> new BigDecimal(draw.whole(5)));
                    Column column = new Column("1", List.of(rows), Terms.PLAIN);
                    Finding finding = FINDER.find(column, draw.whole(6).toString());
                    explained[0] += finding.verdict() == Finding.Verdict.NONE_KNOWN ? 0 : 1;
                });

        assertThat(explained[0]).isLessThanOrEqualTo(25);
    }

    @Test
    void theSharesOfAllKindsSumToOne() {
        forSeeds(
                400,
                draw -> {
                    Problem problem = anyProblem(draw);
                    EventTable table = EventTable.of(problem);
                    long off = table.events().tenths(draw.between(0, table.slips() - 1));
                    BigDecimal written =
                            table.answer()
                                    .add(BigDecimal.valueOf(off, ProblemSlips.places(problem) + 1));

                    Finding finding = FINDER.find(table, written.toPlainString());

                    double shares = finding.slips().stream().mapToDouble(Slip::share).sum();
                    boolean all = finding.slips().size() < Finding.MOST_SLIPS;
                    assertThat(shares)
                            .isLessThanOrEqualTo(1 + 1e-9)
                            .isGreaterThan(all ? 1 - 1e-9 : 0.9);
                    assertThat(finding.explained()).isPositive();
                    assertThat(finding.slips())
                            .allMatch(slip -> slip.hereShare() <= slip.share() + 1e-9);
                    assertThat(finding.slips())
                            .isSortedAccordingTo((a, b) -> Double.compare(b.share(), a.share()));
                });
    }

    private static Problem anyProblem(Draw draw) {
        BigDecimal first = draw.decimal(draw.between(2, 5), draw.between(0, 1));
        BigDecimal second = draw.decimal(draw.between(1, 3), draw.between(0, 1));
        return switch (draw.between(1, 4)) {
            case 1 -> new Column("1", List.of(first, second, first.negate(), second), Terms.PLAIN);
            case 2 -> new Product("1", first, second, Terms.PLAIN.withPlaces(1));
            case 3 -> new Quotient("1", first, second, Terms.PLAIN.withPlaces(draw.between(0, 2)));
            default -> new Root("1", draw.between(2, 3), first, Terms.PLAIN.withPlaces(1));
        };
    }

    static Column in(Mode mode, String sum) {
        return new Column("1", ((Column) problem(sum)).rows(), Terms.PLAIN.withMode(mode));
    }

    static Column called(String sum) {
        return in(Mode.CALLED, sum);
    }

    static Problem problem(String sum) {
        String[] parts = sum.split("[ */]", -1);
        if (sum.contains("*")) {
            return new Product(
                    "1", new BigDecimal(parts[0]), new BigDecimal(parts[1]), Terms.PLAIN);
        }
        if (sum.contains("/")) {
            return new Quotient(
                    "1", new BigDecimal(parts[0]), new BigDecimal(parts[1]), Terms.PLAIN);
        }
        return new Column("1", Arrays.stream(parts).map(BigDecimal::new).toList(), Terms.PLAIN);
    }
}
