package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

/// The slips that lead to one answer are found without the others: the very same, in the same
/// order, as where all are listed and sorted.
class SlipsTowardTest {

    private static final double ROUNDED = 1e-12;

    @Test
    void forEveryAnswerThatASlipLeadsTo() {
        Set<Way> met = EnumSet.noneOf(Way.class);
        forSeeds(
                1_500,
                draw -> {
                    Column column = column(draw);
                    Events events = ProblemSlips.of(column, Set.of());
                    GroupedSlips listed = new GroupedSlips(events);
                    for (int group = 0; group < listed.answers(); group++) {
                        compare(column, events, listed.tenths(group));
                    }
                    for (int i = 0; i < events.size(); i++) {
                        met.add(Code.way(events.code(i)));
                    }
                });
        assertThat(met).containsAll(EnumSet.range(Way.CARRY_LEFT_OUT, Way.WRITTEN_POINT_RIGHT));
        assertThat(met).containsAll(EnumSet.range(Way.COMPLEMENT_ALL_NINES, Way.LOAN_NOT_RETURNED));
    }

    @Test
    void andForAnswersNear() {
        forSeeds(
                2_000,
                draw -> {
                    Column column = column(draw);
                    Events events = ProblemSlips.of(column, Set.of());
                    GroupedSlips listed = new GroupedSlips(events);
                    for (int i = 0; i < 40; i++) {
                        long digits = draw.between(-200, 200);
                        long unit = Tens.power(draw.between(0, 12));
                        compare(column, events, digits * unit == 0 ? 1 : digits * unit);
                        long sum = listed.tenths(draw.between(0, listed.answers() - 1)) + unit;
                        compare(column, events, sum == 0 ? 1 : sum);
                    }
                });
    }

    private static void compare(Column column, Events events, long tenths) {
        Events expected = events.only(tenths);
        Events found = ProblemSlips.toward(column, Set.of(), tenths).orElseThrow();

        assertThat(told(found)).as("%d off in %s", tenths, column.rows()).isEqualTo(told(expected));
        assertThat(found.ofWork()).isEqualTo(expected.ofWork());
        for (int i = 0; i < expected.size(); i++) {
            assertThat(found.weight(i)).isCloseTo(expected.weight(i), within(ROUNDED));
        }
    }

    private static List<String> told(Events events) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            long code = events.code(i);
            told.add(
                    "%s %x after %d, %d off"
                            .formatted(Code.way(code), code, events.moment(i), events.tenths(i)));
        }
        return told;
    }

    /// Of one to ten rows of up to fifteen digits, some alike or zero, some with decimals, some
    /// with totals below zero on the way and at the end.
    static Column column(Draw draw) {
        int places = draw.chance(1, 3) ? draw.between(1, 3) : 0;
        int digits = draw.length(15 - places);
        boolean below = draw.chance(1, 4);
        List<BigDecimal> rows = new ArrayList<>();
        BigDecimal total = BigDecimal.ZERO;
        for (int i = draw.between(1, 10); i > 0; i--) {
            BigDecimal row = row(draw, digits, places, rows);
            boolean minus = draw.chance(3, 10) && (below || total.compareTo(row) >= 0);
            rows.add(minus ? row.negate() : row);
            total = total.add(rows.getLast());
        }
        return new Column("1", rows, Terms.PLAIN);
    }

    private static BigDecimal row(Draw draw, int digits, int places, List<BigDecimal> rows) {
        if (!rows.isEmpty() && draw.chance(1, 10)) {
            return rows.getLast().abs();
        }
        if (draw.chance(1, 30)) {
            return BigDecimal.ZERO;
        }
        if (draw.chance(1, 20)) {
            return BigDecimal.TEN.pow(draw.between(0, digits - 1));
        }
        return draw.decimal(draw.between(1, digits), draw.between(0, places));
    }

    @Test
    void aFindingIsTheSameWhetherAllSlipsAreListedOrNot() {
        SlipFinder finder = new SlipFinder(Rates.shipped());
        forSeeds(
                1_500,
                draw -> {
                    Column column = column(draw);
                    EventTable listed = EventTable.of(column);
                    Events events = listed.events();
                    long off = events.tenths(draw.between(0, events.size() - 1));
                    String written =
                            column.answer()
                                    .value()
                                    .add(BigDecimal.valueOf(off, listed.places()))
                                    .toPlainString();

                    Finding expected = finder.find(listed, written);
                    Finding found = finder.find(EventTable.of(column), written);

                    assertThat(found.slips()).hasSameSizeAs(expected.slips());
                    for (int i = 0; i < found.slips().size(); i++) {
                        Slip slip = found.slips().get(i);
                        Slip same = expected.slips().get(i);
                        assertThat(slip.share()).isCloseTo(same.share(), within(1e-9));
                        assertThat(slip.way()).isEqualTo(same.way());
                        assertThat(slip.where()).isEqualTo(same.where());
                    }
                    assertThat(found.explained()).isCloseTo(expected.explained(), within(1e-9));
                });
    }

    /// The largest sum of sizes that the finder works with, and one more.
    @Test
    void longColumnsAreFollowedAsFarAsTheyAreListed() {
        Column longest = column("9999999999999998", "-1");
        Column tooLong = column("9999999999999999", "-1");

        assertThat(ProblemSlips.toward(longest, Set.of(), 10)).isPresent();
        assertThat(ProblemSlips.toward(tooLong, Set.of(), 10)).isEmpty();
        Events events = ProblemSlips.of(longest, Set.of());
        GroupedSlips listed = new GroupedSlips(events);
        for (int group = 0; group < listed.answers(); group++) {
            compare(longest, events, listed.tenths(group));
        }
        assertThat(EventTable.of(tooLong).slipsTo(new BigDecimal("9999999999999997"))).isPositive();
    }

    private static Column column(String... rows) {
        return new Column("1", List.of(rows).stream().map(BigDecimal::new).toList(), Terms.PLAIN);
    }

    @Test
    void otherProblemsAreListed() {
        Problem called = SlipFinderTest.in(Mode.CALLED, "47 86 -29 318");
        Problem product = SlipFinderTest.problem("38*24");

        assertThat(ProblemSlips.toward(called, Set.of(), 10)).isEmpty();
        assertThat(ProblemSlips.toward(product, Set.of(), 10)).isEmpty();
        assertThat(EventTable.of(product).slipsTo(BigDecimal.valueOf(832))).isPositive();
        assertThat(EventTable.of(product).slipsTo(BigDecimal.valueOf(912))).isZero();
    }
}
