package tamabako.insight.pooling;

import java.util.ArrayList;
import java.util.List;
import tamabako.insight.pooling.MainSlip.Candidate;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// Looks for a pupil's main slip in wrong answers.
///
/// Only wrong answers are held against each other, each under the condition that it is wrong: how
/// often the pupil slips at all says nothing about which slip it is.
public final class MainSlipFinder {

    /// The shares of a pupil's slips that a main slip may have.
    private static final double[] SHARES = {0.3, 0.5, 0.7};

    /// No rate is higher.
    private static final double MOST = 0.999;

    private final Rates usual;

    /// A finder that takes pupils in general to slip by `usual`.
    public MainSlipFinder(Rates usual) {
        this.usual = usual;
    }

    /// The main slip of the pupil who gave `answers`; right ones are passed over.
    public MainSlip find(List<Evidence> answers) {
        List<Evidence> wrong = answers.stream().filter(answer -> !answer.right()).toList();
        double[] expected = expected(wrong);
        double all = 0;
        for (double one : expected) {
            all += one;
        }
        double nothing = logChance(wrong, usual);
        List<Scored> scored = new ArrayList<>();
        for (SlipKind kind : SlipKind.values()) {
            double of = expected[scored.size()];
            scored.add(
                    kind == SlipKind.NONE_KNOWN || of == 0
                            ? new Scored(kind, Double.NEGATIVE_INFINITY, 0)
                            : score(wrong, kind, of / all, nothing));
        }
        return MainSlip.ranked(candidates(scored), wrong.size());
    }

    private record Scored(SlipKind kind, double logBayesFactor, double share) {}

    /// How many slips of each kind are expected in these problems, in the order of the kinds.
    private double[] expected(List<Evidence> wrong) {
        SlipKind[] kinds = SlipKind.values();
        double[] expected = new double[kinds.length];
        for (int i = 0; i < kinds.length; i++) {
            for (Evidence answer : wrong) {
                expected[i] += usual.of(kinds[i]) * answer.occasions(kinds[i]);
            }
        }
        return expected;
    }

    private Scored score(List<Evidence> wrong, SlipKind kind, double usualShare, double nothing) {
        double[] logs = new double[SHARES.length];
        for (int i = 0; i < SHARES.length; i++) {
            logs[i] = logChance(wrong, withShare(kind, usualShare, SHARES[i])) - nothing;
        }
        double most = Math.max(logs[0], Math.max(logs[1], logs[2]));
        double sum = 0;
        double shares = 0;
        for (int i = 0; i < SHARES.length; i++) {
            double weight = Math.exp(logs[i] - most);
            sum += weight;
            shares += weight * SHARES[i];
        }
        return new Scored(kind, most + Math.log(sum / SHARES.length), shares / sum);
    }

    /// The usual rates, so changed that `kind` makes up `share` of the slips and there are as many
    /// slips as before.
    private Rates withShare(SlipKind kind, double usualShare, double share) {
        double others = (1 - share) / Math.max(1 - usualShare, 1e-9);
        return usual.with(one -> {
            double factor =
                    one == kind ? share / usualShare : one == SlipKind.NONE_KNOWN ? 1 : others;
            return Math.min(usual.of(one) * factor, MOST);
        });
    }

    private static double logChance(List<Evidence> wrong, Rates rates) {
        double log = 0;
        for (Evidence answer : wrong) {
            log += Math.log(answer.chance(rates) / answer.chanceOfWrong(rates));
        }
        return log;
    }

    private static List<Candidate> candidates(List<Scored> scored) {
        List<Scored> possible =
                scored.stream()
                        .filter(one -> one.logBayesFactor() > Double.NEGATIVE_INFINITY)
                        .toList();
        double most = 0;
        for (Scored one : possible) {
            most = Math.max(most, one.logBayesFactor());
        }
        double all = possible.size() * Math.exp(-most);
        for (Scored one : possible) {
            all += Math.exp(one.logBayesFactor() - most);
        }
        List<Candidate> candidates = new ArrayList<>();
        for (Scored one : possible) {
            double certainty = Math.exp(one.logBayesFactor() - most) / all;
            candidates.add(new Candidate(one.kind(), one.share(), one.logBayesFactor(), certainty));
        }
        return candidates;
    }
}
