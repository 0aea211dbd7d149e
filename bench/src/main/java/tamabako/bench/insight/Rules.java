package tamabako.bench.insight;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import tamabako.insight.rule.LastingRule;
import tamabako.insight.rule.LastingRules;
import tamabako.insight.rule.RuleEvidence;
import tamabako.insight.rule.RuleTally;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.ColumnAnswer;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// Pupils who follow a wrong rule: how often it is named after so many wrong answers.
final class Rules {

    /// How many wrong answers are looked at, together with the right ones between them.
    static final int[] WRONG = {1, 3, 5, 10};

    /// A pupil whose rule has hardly ever an occasion is not tried for longer.
    private static final int MOST_PROBLEMS = 150;

    private static final double SLIPS_BESIDE_A_RULE = 0.5;

    private final ColumnPlan plan;
    private final double followed;
    private final Score[] named = new Score[WRONG.length];
    private final Score[] found = new Score[WRONG.length];
    private final Score[] rightWhereFound = new Score[WRONG.length];

    Rules(ColumnPlan plan, double followed) {
        this.plan = plan;
        this.followed = followed;
        Arrays.setAll(named, _ -> new Score());
        Arrays.setAll(found, _ -> new Score());
        Arrays.setAll(rightWhereFound, _ -> new Score());
    }

    /// Tries so many pupils, each with another rule, or none where rules are never followed.
    Rules work(int pupils, SplittableRandom chance) {
        List<LastingRule> rules = LastingRule.known();
        for (int i = 0; i < pupils; i++) {
            pupil(rules.get(chance.nextInt(rules.size())), chance);
        }
        return this;
    }

    private void pupil(LastingRule rule, SplittableRandom chance) {
        Habit habit =
                new Habit(
                        Habit.Part.valueOf(rule.part().name()),
                        rule.adding(),
                        rule.digit(),
                        rule.used(),
                        followed);
        double times = followed == 0 ? 1 : SLIPS_BESIDE_A_RULE;
        Rates rates =
                Rates.shipped()
                        .with(kind ->
                                Rates.shipped().of(kind)
                                        * (kind == SlipKind.NONE_KNOWN ? 1 : times));
        RuleTally answers = new RuleTally();
        int wrong = 0;
        for (int i = 0; i < MOST_PROBLEMS && wrong < WRONG[WRONG.length - 1]; i++) {
            List<Long> rows = plan.draw(chance);
            OptionalLong written = ColumnPupil.writes(rows, Fate.by(rates, chance, habit));
            if (written.isEmpty()) {
                continue;
            }
            long total = rows.stream().mapToLong(Long::longValue).sum();
            EventTable table = EventTable.of(ColumnPlan.column(rows));
            ColumnAnswer.of(table, Long.toString(written.getAsLong()))
                    .map(answer -> RuleEvidence.of(answer, Rates.shipped()))
                    .ifPresent(answers::add);
            if (written.getAsLong() != total) {
                wrong++;
                judge(Arrays.binarySearch(WRONG, wrong), answers, rule);
            }
        }
    }

    private void judge(int n, RuleTally answers, LastingRule rule) {
        if (n < 0) {
            return;
        }
        LastingRules rules = answers.rules(Rates.shipped(), Rates.shipped());
        List<LastingRule> ranked =
                rules.likeliest().stream().map(LastingRules.Candidate::rule).toList();
        boolean right = !ranked.isEmpty() && ranked.getFirst().equals(rule);
        named[n].note(ranked, rule);
        found[n].note(rules.found());
        if (rules.found()) {
            rightWhereFound[n].note(right && followed > 0);
        }
    }

    /// One line of the table after `n`, an index of [#WRONG].
    String line(int n) {
        return "| %s | %.1f | %d | %d | %s | %s | %s |"
                .formatted(
                        plan,
                        followed,
                        WRONG[n],
                        named[n].asked(),
                        named[n],
                        found[n].share(),
                        rightWhereFound[n].share());
    }

    static String head() {
        return "| problem | followed | wrong answers | pupils | first / three | told as found |"
                + " right where told |";
    }
}
