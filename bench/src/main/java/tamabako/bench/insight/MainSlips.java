package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import tamabako.insight.pooling.MainSlip;
import tamabako.insight.pooling.MainSlipFinder;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;

/// Pupils with a main slip, and pupils without: how often it is named after so many wrong answers.
final class MainSlips {

    /// How many wrong answers are looked at.
    static final int[] WRONG = {5, 10, 20};

    private final ColumnPlan plan;
    private final Rates usual = Rates.shipped();
    private final MainSlipFinder finder = new MainSlipFinder(usual);
    private final Score[] named = scores();
    private final Score[] votes = scores();
    private final Score[] said = scores();
    private final Score[] rightWhereSaid = scores();
    private final List<List<Double>> factors = List.of(list(), list(), list());

    MainSlips(ColumnPlan plan) {
        this.plan = plan;
    }

    private static Score[] scores() {
        Score[] scores = new Score[WRONG.length];
        Arrays.setAll(scores, _ -> new Score());
        return scores;
    }

    private static List<Double> list() {
        return new ArrayList<>();
    }

    /// Tries so many pupils, each with another main slip of this share; 0 for none.
    MainSlips work(int pupils, double share, SplittableRandom chance) {
        EventTable typical = EventTable.of(ColumnPlan.column(plan.draw(chance)));
        List<SlipKind> kinds = kinds(typical);
        for (int i = 0; i < pupils; i++) {
            SlipKind main = kinds.get(i % kinds.size());
            Rates rates = share == 0 ? usual : withShare(usual, typical, main, share);
            List<Evidence> wrong = wrong(rates, WRONG[WRONG.length - 1], chance);
            for (int n = 0; n < WRONG.length; n++) {
                judge(n, wrong.subList(0, WRONG[n]), main);
            }
        }
        return this;
    }

    /// The kinds that can be made in a problem like this one.
    static List<SlipKind> kinds(EventTable typical) {
        return Arrays.stream(SlipKind.values())
                .filter(kind -> kind != SlipKind.NONE_KNOWN && typical.occasions(kind) > 0)
                .filter(kind -> kind != SlipKind.COMPLEMENT_MISREAD)
                .toList();
    }

    private void judge(int n, List<Evidence> wrong, SlipKind main) {
        MainSlip found = finder.find(wrong);
        List<SlipKind> ranked = found.likeliest().stream().map(MainSlip.Candidate::kind).toList();
        named[n].note(ranked, main);
        votes[n].note(votes(wrong), main);
        boolean right = ranked.getFirst() == main;
        said[n].note(found.standsOut() && right);
        if (found.standsOut()) {
            rightWhereSaid[n].note(right);
        }
        factors.get(n).add(found.likeliest().getFirst().logBayesFactor());
    }

    /// The kinds by how often each is the likeliest of a single answer.
    private List<SlipKind> votes(List<Evidence> wrong) {
        Map<SlipKind, Integer> votes = new EnumMap<>(SlipKind.class);
        for (Evidence answer : wrong) {
            Evidence.Sum sum = Evidence.sum(List.of(answer), usual);
            SlipKind likeliest =
                    Arrays.stream(SlipKind.values())
                            .max(Comparator.comparingDouble(kind -> sum.slips().of(kind)))
                            .orElseThrow();
            votes.merge(likeliest, 1, Integer::sum);
        }
        return votes.entrySet().stream()
                .sorted(Map.Entry.<SlipKind, Integer>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    /// The usual rates, but so that `main` makes up this share of the slips.
    static Rates withShare(Rates usual, EventTable typical, SlipKind main, double share) {
        double all = 0;
        for (SlipKind kind : SlipKind.values()) {
            all += usual.of(kind) * typical.occasions(kind);
        }
        double sum = all;
        double of = usual.of(main) * typical.occasions(main) / sum;
        return usual.with(kind ->
                Math.min(
                        0.9,
                        usual.of(kind) * (kind == main ? share / of : (1 - share) / (1 - of))));
    }

    private List<Evidence> wrong(Rates rates, int count, SplittableRandom chance) {
        List<Evidence> wrong = new ArrayList<>();
        while (wrong.size() < count) {
            List<Long> rows = plan.draw(chance);
            OptionalLong written = ColumnPupil.writes(rows, Fate.by(rates, chance, Habit.NONE));
            long total = rows.stream().mapToLong(Long::longValue).sum();
            if (written.isPresent() && written.getAsLong() != total) {
                EventTable table = EventTable.of(ColumnPlan.column(rows));
                String answer = Long.toString(written.getAsLong());
                SlipFinder.evidence(table, answer).ifPresent(wrong::add);
            }
        }
        return wrong;
    }

    /// One line of the table after `n`, an index of [#WRONG].
    String line(String share, int n) {
        List<Double> sorted = factors.get(n).stream().sorted().toList();
        return "| %s | %s | %d | %s | %s | %s | %s | %.2f |"
                .formatted(
                        plan,
                        share,
                        WRONG[n],
                        named[n],
                        votes[n],
                        said[n].share(),
                        rightWhereSaid[n].share(),
                        sorted.get((int) (0.95 * sorted.size())));
    }

    static String head() {
        return "| problem | share of the main slip | wrong answers | ours: first / three | votes |"
                + " said, and right | right where said | 95 % of the factors are below |";
    }
}
