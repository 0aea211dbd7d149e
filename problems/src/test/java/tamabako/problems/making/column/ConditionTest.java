package tamabako.problems.making.column;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.frame.Technique.DIRECT;
import static tamabako.frame.Technique.FIVE_COMPLEMENT;
import static tamabako.frame.Technique.TEN_WITH_FIVE;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.frame.Working;
import tamabako.frame.column.ColumnWork;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.problems.making.column.DigitCondition.DigitsEach;
import tamabako.problems.making.column.DigitCondition.LastDigits;
import tamabako.problems.making.column.DigitCondition.LeadsDiffer;
import tamabako.problems.making.column.DigitCondition.NoCounting;
import tamabako.problems.making.column.DigitCondition.NoRepeatedDigit;
import tamabako.problems.making.column.DigitCondition.PlacesDiffer;
import tamabako.problems.making.column.DigitCondition.RowsDiffer;
import tamabako.problems.making.column.HandCondition.CarryRun;
import tamabako.problems.making.column.HandCondition.OnlyTechniques;
import tamabako.problems.making.column.HandCondition.Strokes;
import tamabako.problems.making.column.HandCondition.TechniqueCount;
import tamabako.problems.making.column.TotalCondition.AnswerLength;
import tamabako.problems.making.column.TotalCondition.BelowZero;
import tamabako.problems.making.column.TotalCondition.Dips;
import tamabako.problems.making.column.TotalCondition.NotRound;
import tamabako.problems.words.ProblemWords;
import tamabako.problems.words.Sayable;
import tamabako.testkit.Draw;

/// Each condition alone, on columns written for it.
class ConditionTest {

    private final StringBuilder said = new StringBuilder();

    @Test
    void eachConditionIsMetOrSaysWhatFailed() {
        met(new OnlyTechniques(Set.of(DIRECT)), "12", "5", "-11");
        missed(new OnlyTechniques(Set.of(DIRECT)), "3", "4");
        met(new TechniqueCount(FIVE_COMPLEMENT, 2, 2), "33", "44");
        missed(new TechniqueCount(FIVE_COMPLEMENT, 3, HandCondition.ANY), "33", "44");
        missed(new TechniqueCount(FIVE_COMPLEMENT, 0, 1), "33", "44");
        missed(new TechniqueCount(TEN_WITH_FIVE, 0, 0), "8", "6");
        met(new CarryRun(2), "95", "7");
        met(new CarryRun(3), "1000", "-1");
        missed(new CarryRun(2), "95", "15");
        met(new CarryRun(0, 1), "95", "15");
        missed(new CarryRun(0, 1), "95", "7");
        missed(new CarryRun(0, 0), "5", "7");
        met(new Strokes(6, 6), "34", "78");
        missed(new Strokes(7, 9), "34", "78");
        met(new DigitsEach(0, 2), "12", "21", "30");
        missed(new DigitsEach(0, 2), "12", "21", "31");
        missed(new DigitsEach(1, 2), "12", "345", "6780");
        met(new LeadsDiffer(), "12", "21", "12");
        missed(new LeadsDiffer(), "12", "21", "213");
        met(new RowsDiffer(), "12", "21", "120");
        missed(new RowsDiffer(), "12", "21", "-12");
        met(new RowsDiffer(1), "12", "21", "-12");
        missed(new RowsDiffer(1), "12", "12", "-12");
        met(new NoRepeatedDigit(), "7", "776");
        missed(new NoRepeatedDigit(), "7", "-777");
        met(new NoCounting(), "12", "135", "122");
        missed(new NoCounting(), "12", "-987");
        missed(new NoCounting(), "7.89", "1.00");
        met(new PlacesDiffer(), "123", "12", "123");
        missed(new PlacesDiffer(), "123", "33", "1");
        met(new LastDigits(1), "11", "15", "12");
        missed(new LastDigits(1), "11", "15", "20");
        missed(new LastDigits(3), "12", "14", "16");
        met(new BelowZero(Dips.NEVER), "12", "-12", "3");
        missed(new BelowZero(Dips.NEVER), "12", "-13", "3");
        met(new BelowZero(Dips.ONCE_AND_BACK), "12", "-13", "3");
        missed(new BelowZero(Dips.ONCE_AND_BACK), "12", "-1", "3");
        missed(new BelowZero(Dips.ONCE_AND_BACK), "12", "-13", "-3");
        met(new BelowZero(Dips.TO_THE_END), "12", "-13", "3", "-9");
        missed(new BelowZero(Dips.TO_THE_END), "12", "-13", "3");
        missed(new BelowZero(Dips.TO_THE_END), "1", "-2", "2", "-2", "2", "-9");
        met(new AnswerLength(2, 3), "12", "3");
        missed(new AnswerLength(3, 3), "12", "3");
        missed(new AnswerLength(1, 1), "12", "3");
        met(new NotRound(), "12", "3");
        missed(new NotRound(), "12", "8");

        assertGolden("conditions.txt", said.toString());
    }

    @Test
    void shapeAndSignsSayWhatFailed() {
        Shape shape = new Shape(3, new Lengths.Between(1, 2), 0);
        assertThat(shape.missedBy(column("12", "3", "45"))).isEmpty();
        say(shape, shape.missedBy(column("12", "3")));
        say(shape, shape.missedBy(column("12", "300", "0")));
        Shape table = new Shape(3, new Lengths.Table(List.of(1, 2, 2)), 0);
        assertThat(table.missedBy(column("12", "3", "45"))).isEmpty();
        say(table, table.missedBy(column("12", "30", "45")));
        Shape total = new Shape(3, new Lengths.Total(5, 1, 3), 0);
        assertThat(total.missedBy(column("1", "3", "456"))).isEmpty();
        say(total, total.missedBy(column("12", "30", "45")));
        Signs signs = Signs.minus(1, 2).endingPlus().inRunsOf(1);
        assertThat(signs.missedBy(column("12", "-3", "45"))).isEmpty();
        say(signs, signs.missedBy(column("12", "3", "45")));
        say(signs, signs.missedBy(column("12", "3", "-4")));
        say(signs, signs.missedBy(column("12", "-3", "-4", "5")));
        say(Signs.PLUS, Signs.PLUS.missedBy(column("-12", "3")));
        say(Signs.minus(1), Signs.minus(1).missedBy(column("12", "3")));

        assertGolden("shapes.txt", said.toString());
    }

    @Test
    void howFarAColumnIsIsZeroWhereNothingIsMissed() {
        int[] times = new int[2];
        forSeeds(
                3000,
                draw -> {
                    List<BigDecimal> rows = rows(draw);
                    Column column = new Column("", rows, Terms.PLAIN);
                    Condition condition = condition(draw);

                    boolean met = condition.missedBy(column).isEmpty();

                    assertThat(Measure.of(condition).of(Facts.of(column)) == 0)
                            .as("%s of %s", condition, rows)
                            .isEqualTo(met);
                    times[met ? 1 : 0]++;
                });
        assertThat(times[0] + times[1] < 3000 || (times[0] > 500 && times[1] > 500)).isTrue();
    }

    /// The walk of the hand itself, step by step, is the judge here.
    @Test
    void whatTheHandDoesIsCountedAsItDoesIt() {
        forSeeds(
                1000,
                draw -> {
                    List<BigDecimal> rows = rows(draw);
                    Facts facts = Facts.of(new Column("", rows, Terms.PLAIN));
                    Working working = ColumnWork.work(rows, Setup.COMMON);
                    List<Step> steps = working.trace().steps();
                    for (Technique technique : Technique.values()) {
                        assertThat(facts.count(technique))
                                .isEqualTo(
                                        (int)
                                                steps.stream()
                                                        .filter(s -> s.technique() == technique)
                                                        .count());
                    }
                    int strokes =
                            steps.stream().mapToInt(s -> s.strokes().size()).sum()
                                    + working.setting().steps().stream()
                                            .mapToInt(s -> s.strokes().size())
                                            .sum();
                    assertThat(facts.strokes()).isEqualTo(strokes);
                    assertThat(facts.totals().last())
                            .isEqualTo(
                                    rows.stream()
                                            .reduce(BigDecimal.ZERO, BigDecimal::add)
                                            .longValueExact());
                    assertThat(facts.longestRun() > 0)
                            .isEqualTo(
                                    steps.stream()
                                            .anyMatch(s ->
                                                    s.cause() instanceof Cause.Carry
                                                            || s.cause() instanceof Cause.Borrow));
                });
    }

    private void met(Condition condition, String... rows) {
        assertThat(condition.missedBy(column(rows))).as("%s", condition).isEmpty();
    }

    private void missed(Condition condition, String... rows) {
        say(condition, condition.missedBy(column(rows)).stream().toList());
    }

    private void say(Sayable asked, List<Missed> missed) {
        assertThat(missed).as("%s", asked).isNotEmpty();
        for (Locale language : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            ProblemWords words = ProblemWords.of(language);
            said.append(words.say(asked)).append('\n');
            missed.forEach(one -> said.append("  ").append(words.say(one)).append('\n'));
        }
    }

    private static Column column(String... rows) {
        List<BigDecimal> numbers = new ArrayList<>();
        Arrays.stream(rows).map(BigDecimal::new).forEach(numbers::add);
        return new Column("", numbers, Terms.PLAIN);
    }

    private static List<BigDecimal> rows(Draw draw) {
        List<BigDecimal> rows = new ArrayList<>();
        int count = draw.between(2, 6);
        for (int row = 0; row < count; row++) {
            BigDecimal number = new BigDecimal(draw.whole(draw.between(1, 4)));
            rows.add(row > 0 && draw.chance(1, 3) ? number.negate() : number);
        }
        return rows;
    }

    private static Condition condition(Draw draw) {
        int least = draw.between(0, 4);
        int most = least + draw.between(0, 4);
        return draw.oneOf(
                List.of(
                        new OnlyTechniques(
                                EnumSet.of(DIRECT, draw.oneOf(List.of(Technique.values())))),
                        new TechniqueCount(draw.oneOf(List.of(Technique.values())), least, most),
                        new CarryRun(least / 2, most / 2),
                        new Strokes(4 * least, 6 * most),
                        new DigitsEach(0, draw.between(1, 4)),
                        new LeadsDiffer(),
                        new RowsDiffer(),
                        new NoRepeatedDigit(),
                        new NoCounting(),
                        new PlacesDiffer(),
                        new LastDigits(1),
                        new BelowZero(draw.oneOf(List.of(Dips.values()))),
                        new AnswerLength(least, most),
                        new NotRound()));
    }
}
