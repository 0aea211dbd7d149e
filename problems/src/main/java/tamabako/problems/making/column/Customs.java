package tamabako.problems.making.column;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/// What setters of papers keep to beyond the rules of an exam. Common practice, no published
/// source.
public final class Customs {

    /// Rows of so few digits are for beginners, whose columns end with a plus row.
    private static final int FEW_DIGITS = 2;

    private static final int LONGEST_RUN = 2;

    /// Among fewer digits, chance alone leaves some out.
    private static final int MANY_DIGITS = 40;

    /// How many more rows than must be may be alike where it cannot be helped.
    private static final int MORE_ALIKE = 3;

    private Customs() {}

    /// What is kept to in the columns of a paper, to be asked one after the other as far as it can
    /// be: no two rows alike, no row like 777 or 123, no lead twice running, no digit twice running
    /// in one place, last digits mixed, a total that is not round, and digits that come about
    /// equally often where there are many.
    public static List<Condition> ofPapers(Shape shape) {
        List<Condition> customs = new ArrayList<>();
        customs.add(new DigitCondition.RowsDiffer(shape.mustBeAlike()));
        customs.add(new DigitCondition.LeadsDiffer());
        customs.add(new DigitCondition.NoRepeatedDigit());
        customs.add(new DigitCondition.NoCounting());
        customs.add(new DigitCondition.PlacesDiffer());
        customs.add(new DigitCondition.LastDigits((3 * shape.rows() + 9) / 10));
        customs.add(new TotalCondition.NotRound());
        int fewest = shape.lengths().leastInAll(shape.rows());
        if (fewest >= MANY_DIGITS) {
            int most = shape.lengths().mostInAll(shape.rows());
            customs.add(new DigitCondition.DigitsEach(least(fewest), most(most)));
        }
        return customs;
    }

    /// What is kept to even on a practice sheet: no two rows alike, or else as few as can be. Of
    /// these only the first that can be kept is asked.
    public static List<Condition> ofPractice(Shape shape) {
        int alike = shape.mustBeAlike();
        return IntStream.rangeClosed(alike, alike + MORE_ALIKE)
                .<Condition>mapToObj(DigitCondition.RowsDiffer::new)
                .toList();
    }

    /// `asked`, with minus rows at most two running, and none last in short rows.
    public static Signs signsOfPapers(Signs asked, Shape shape) {
        return signsOfPractice(asked, shape).inRunsOf(Math.min(asked.longestRun(), LONGEST_RUN));
    }

    /// `asked`, with no minus row last in short rows.
    public static Signs signsOfPractice(Signs asked, Shape shape) {
        return shape.lengths().most() <= FEW_DIGITS ? asked.endingPlus() : asked;
    }

    /// A fifth less than a tenth of the digits, and at least two less: 8 of 100.
    private static int least(int digits) {
        return digits / 10 - Math.max(2, digits / 50);
    }

    /// A fifth more: 12 of 100.
    private static int most(int digits) {
        return (digits + 9) / 10 + Math.max(2, digits / 50);
    }
}
