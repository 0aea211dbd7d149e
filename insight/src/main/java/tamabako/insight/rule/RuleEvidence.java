package tamabako.insight.rule;

import java.util.List;
import tamabako.insight.slip.ColumnAnswer;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// What one answer to a column says about every wrong rule.
///
/// Under a rule that is followed with chance `rho`, the answer's chance is the sum over all ways in
/// which the column can go ([Ways]) of `rho^followed * (1 - rho)^refused`, times the chance that
/// slips lead from that total to the answer. Pupils who have a rule are taken to slip half as often
/// otherwise.
public final class RuleEvidence {

    private static final double SLIPS_BESIDE_A_RULE = 0.5;
    private static final List<LastingRule> RULES = LastingRule.known();

    private final Evidence answer;
    private final double[] logs;
    private final boolean[] met;

    private RuleEvidence(ColumnAnswer column, Rates beside) {
        this.answer = column.evidence();
        this.logs = new double[RULES.size() * Following.values()];
        this.met = new boolean[RULES.size()];
        ColumnAnswer.Slips slips = column.slips(beside);
        long[] rows = column.rows();
        for (int i = 0; i < met.length; i++) {
            weigh(i, RuleWalk.of(RULES.get(i), rows), slips);
        }
    }

    /// What `column` says, where pupils without a rule slip by `usual`.
    public static RuleEvidence of(ColumnAnswer column, Rates usual) {
        return new RuleEvidence(
                column,
                usual.with(kind ->
                        kind == SlipKind.NONE_KNOWN
                                ? usual.of(kind)
                                : usual.of(kind) * SLIPS_BESIDE_A_RULE));
    }

    private void weigh(int rule, Ways ways, ColumnAnswer.Slips slips) {
        double[] chances = new double[Following.values()];
        for (int way = 0; way < ways.size(); way++) {
            met[rule] |= ways.followed(way) > 0;
            double chance = ways.times(way) * slips.lead(ways.total(way));
            for (int i = 0; i < chances.length && chance > 0; i++) {
                chances[i] += chance * Following.chance(i, ways.followed(way), ways.refused(way));
            }
        }
        for (int i = 0; i < chances.length; i++) {
            logs[rule * chances.length + i] = Math.log(chances[i] + slips.otherwise());
        }
    }

    /// The answer without any rule.
    Evidence answer() {
        return answer;
    }

    /// The logarithm of the answer's chance under a rule, by its number, followed as often as value
    /// `i` of [Following] says.
    double log(int rule, int i) {
        return logs[rule * Following.values() + i];
    }

    /// Whether a rule could have been followed.
    boolean met(int rule) {
        return met[rule];
    }
}
