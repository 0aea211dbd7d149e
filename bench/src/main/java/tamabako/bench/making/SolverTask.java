package tamabako.bench.making;

import java.util.Arrays;
import java.util.Set;
import tamabako.frame.Technique;

/// A wish for columns as a solver is told it.
///
/// @param rows how many
/// @param least the fewest digits of a row
/// @param most the most digits of a row
/// @param rods digits that the running total may have
/// @param leastMinus the fewest minus rows
/// @param mostMinus the most minus rows
/// @param allowed techniques that steps may be done by
/// @param eachTechnique how often each technique has to come at least; 0 if that is not asked
/// @param leastDigits how often each digit has to come
/// @param mostDigits how often each digit may come; 0 if that is not asked
/// @param leadsDiffer whether rows that follow one another begin with different digits
/// @param answerDigits how many digits the answer has; 0 if that is not asked
record SolverTask(
        int rows,
        int least,
        int most,
        int rods,
        int leastMinus,
        int mostMinus,
        Set<Technique> allowed,
        int eachTechnique,
        int leastDigits,
        int mostDigits,
        boolean leadsDiffer,
        int answerDigits) {

    private static final Technique[] ALL = Technique.values();

    /// Whether steps have to be told apart by technique.
    boolean asksForTechniques() {
        return eachTechnique > 0 || allowed.size() < Technique.values().length;
    }

    boolean passesTen() {
        return allowed.stream().anyMatch(Technique::passesTen);
    }

    /// Whether `rows` have the signs and lengths, and leads that differ if they must.
    boolean hasShape(long[] rows) {
        int minus = 0;
        int before = 0;
        for (long row : rows) {
            String digits = Long.toString(Math.abs(row));
            int lead = digits.charAt(0);
            minus += row < 0 ? 1 : 0;
            if (row == 0
                    || digits.length() < least
                    || digits.length() > most
                    || (leadsDiffer && lead == before)) {
                return false;
            }
            before = lead;
        }
        return rows.length == rows() && rows[0] > 0 && minus >= leastMinus && minus <= mostMinus;
    }

    /// Whether each digit comes as often as it may.
    boolean hasDigits(long[] rows) {
        int[] counts = new int[10];
        for (long row : rows) {
            Long.toString(Math.abs(row)).chars().forEach(digit -> counts[digit - '0']++);
        }
        return mostDigits == 0
                || Arrays.stream(counts).allMatch(n -> n >= leastDigits && n <= mostDigits);
    }

    /// Whether what `hand` did has the techniques and the answer.
    boolean isWorkedBy(Hand hand) {
        for (Technique technique : ALL) {
            int count = hand.count(technique);
            if (count < eachTechnique || (count > 0 && !allowed.contains(technique))) {
                return false;
            }
        }
        return answerDigits == 0 || hand.digits() == answerDigits;
    }
}
