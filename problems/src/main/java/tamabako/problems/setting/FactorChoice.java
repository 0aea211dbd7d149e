package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tamabako.problems.Problem;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.setting.FactorBalance.Look;

/// Chooses, of products or quotients made for a set, those that keep the customs together: problems
/// change places with spare ones of the same digits, with or without decimals and inner zeros as
/// they, as long as no more of the customs is missed.
final class FactorChoice {

    /// Changes tried in a row that gain nothing before what was found has to do.
    private static final int TRIES = 500;

    /// What a set misses at the least where it lacks a problem of a sort that is asked for: more
    /// than all other customs together.
    static final double LACKING = 1_000;

    private final List<Problem> problems = new ArrayList<>();
    private final List<Look> looks = new ArrayList<>();
    private final List<List<Integer>> spares = new ArrayList<>();
    private final int count;
    private final FactorCustoms customs;

    FactorChoice(List<Problem> set, List<Problem> spare, FactorCustoms customs) {
        this.count = set.size();
        this.customs = customs;
        problems.addAll(set);
        problems.addAll(spare);
        Map<String, List<Integer>> byPlan = new HashMap<>();
        for (int i = 0; i < problems.size(); i++) {
            Look look = new Look(problems.get(i));
            looks.add(look);
            List<Integer> same = byPlan.computeIfAbsent(plan(look), _ -> new ArrayList<>());
            spares.add(same);
            if (i >= count) {
                same.add(i);
            }
        }
    }

    /// What of a problem stays as it was planned.
    private static String plan(Look look) {
        return look.sort().replaceAll(" (up|down|short|revised)", "");
    }

    /// The best set found, in the order of the first.
    List<Problem> best(Draws draws) {
        double missed = missed();
        for (int vain = 0; vain < TRIES && missed > 0; vain++) {
            int place = (int) draws.below(count);
            List<Integer> same = spares.get(place);
            if (same.isEmpty()) {
                continue;
            }
            int other = same.get((int) draws.below(same.size()));
            swap(place, other);
            double changed = missed();
            if (changed > missed) {
                swap(place, other);
            } else {
                vain = changed < missed ? 0 : vain;
                missed = changed;
            }
        }
        return List.copyOf(problems.subList(0, count));
    }

    /// What the set misses.
    double missed() {
        List<Look> set = looks.subList(0, count);
        return customs.unbalanced(set) + LACKING * customs.missed(set);
    }

    private void swap(int place, int other) {
        Collections.swap(problems, place, other);
        Collections.swap(looks, place, other);
    }
}
