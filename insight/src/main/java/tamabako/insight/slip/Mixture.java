package tamabako.insight.slip;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/// Which kinds of slip lead to one answer together: one, two or three at once, each combination
/// with its weight, whatever the rates.
final class Mixture {

    /// Stands for no further kind.
    static final int NO_OTHER = SlipKind.values().length;

    private final double[][] pairs = new double[NO_OTHER][NO_OTHER + 1];
    private final Map<Integer, Double> triples = new LinkedHashMap<>();

    /// One combination of kinds by their indexes; [#NO_OTHER] where there are fewer than three.
    record Part(int first, int second, int third, double weight) {

        int slips() {
            return third != NO_OTHER ? 3 : second != NO_OTHER ? 2 : 1;
        }
    }

    static Mixture of(Explanations explanations) {
        Mixture mixture = new Mixture();
        mixture.addAll(explanations);
        return mixture;
    }

    private void addAll(Explanations explanations) {
        EventTable table = explanations.table();
        Events alone = explanations.alone();
        for (int i = 0; i < alone.size(); i++) {
            pairs[Code.way(alone.code(i)).kind().index()][NO_OTHER] += alone.weight(i);
        }
        for (int i = 0; i < explanations.pairs(); i++) {
            addPairs(explanations, explanations.low(i), explanations.high(i));
        }
        for (ExactPairs.Pair pair : explanations.exact()) {
            double[] first = new double[NO_OTHER];
            add(first, table.events(), pair.first());
            double[] second = new double[NO_OTHER];
            for (int i = 0; i < pair.second().size(); i++) {
                add(second, pair.second(), i);
            }
            addPairs(first, second, 1);
        }
        for (Triples.Triple triple : explanations.triples()) {
            addTriples(
                    ofWork(table, triple.low()),
                    ofWork(table, triple.middle()),
                    ofWork(table, triple.high()),
                    triple.times());
        }
        for (int i = 0; i < explanations.pencils(); i++) {
            double[] pencil = new double[NO_OTHER];
            pencil[Code.way(explanations.pencil(i)).kind().index()] = explanations.pencilWeight(i);
            addPairs(ofWork(table, explanations.before(i)), pencil, 1);
        }
    }

    private static void add(double[] kinds, Events events, int i) {
        kinds[Code.way(events.code(i)).kind().index()] += events.weight(i);
    }

    private void addPairs(Explanations explanations, int low, int high) {
        EventTable table = explanations.table();
        double times = low == high ? 0.5 : 1;
        for (int place = table.start(low); place < table.endOfWork(low); place++) {
            double[] partners = new double[NO_OTHER];
            for (int other = table.start(high); other < table.endOfWork(high); other++) {
                if (explanations.addUp(place, other)) {
                    add(partners, table.events(), table.at(other));
                }
            }
            double[] one = new double[NO_OTHER];
            add(one, table.events(), table.at(place));
            addPairs(one, partners, times);
        }
    }

    private void addPairs(double[] some, double[] others, double times) {
        for (int one = 0; one < NO_OTHER; one++) {
            for (int other = 0; other < NO_OTHER && some[one] > 0; other++) {
                double weight = times * some[one] * others[other];
                pairs[Math.min(one, other)][Math.max(one, other)] += weight;
            }
        }
    }

    private void addTriples(double[] low, double[] middle, double[] high, double times) {
        for (int one = 0; one < NO_OTHER; one++) {
            for (int two = 0; two < NO_OTHER && low[one] > 0; two++) {
                for (int three = 0; three < NO_OTHER && middle[two] > 0; three++) {
                    if (high[three] > 0) {
                        int[] kinds = {one, two, three};
                        Arrays.sort(kinds);
                        int key = (kinds[0] * NO_OTHER + kinds[1]) * NO_OTHER + kinds[2];
                        double weight = times * low[one] * middle[two] * high[three];
                        triples.merge(key, weight, Double::sum);
                    }
                }
            }
        }
    }

    private static double[] ofWork(EventTable table, int group) {
        double[] kinds = new double[NO_OTHER];
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            kinds[Slot.kindIndex(table.slot(place))] += table.events().weight(table.at(place));
        }
        return kinds;
    }

    /// All combinations with a weight.
    Part[] parts() {
        int size = triples.size();
        for (double[] row : pairs) {
            size += (int) Arrays.stream(row).filter(weight -> weight > 0).count();
        }
        Part[] parts = new Part[size];
        int filled = 0;
        for (int kind = 0; kind < NO_OTHER; kind++) {
            for (int other = 0; other <= NO_OTHER; other++) {
                if (pairs[kind][other] > 0) {
                    parts[filled++] = new Part(kind, other, NO_OTHER, pairs[kind][other]);
                }
            }
        }
        for (Map.Entry<Integer, Double> triple : triples.entrySet()) {
            int key = triple.getKey();
            parts[filled++] =
                    new Part(
                            key / NO_OTHER / NO_OTHER,
                            key / NO_OTHER % NO_OTHER,
                            key % NO_OTHER,
                            triple.getValue());
        }
        return parts;
    }
}
