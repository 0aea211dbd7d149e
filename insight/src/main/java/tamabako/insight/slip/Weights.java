package tamabako.insight.slip;

import java.util.Locale;
import java.util.ResourceBundle;

/// How the slips of one kind share among their ways, and how printed and called digits are
/// confused.
///
/// Only the proportions count: on each occasion the ways that the beads allow share the whole.
final class Weights {

    private static final double[] WAYS = new double[Way.values().length];
    private static final double[][] READ_AS = new double[10][10];
    private static final double[][] HEARD_AS = new double[10][10];

    static {
        ResourceBundle file = ResourceBundle.getBundle("tamabako.insight.slip.rates", Locale.ROOT);
        for (Way way : Way.values()) {
            String key = "way." + way.word();
            WAYS[way.index()] = file.containsKey(key) ? Double.parseDouble(file.getString(key)) : 1;
        }
        for (int digit = 0; digit <= 9; digit++) {
            fill(READ_AS, file, "read.", digit);
            fill(HEARD_AS, file, "heard.", digit);
        }
    }

    private Weights() {}

    private static void fill(double[][] table, ResourceBundle file, String key, int digit) {
        String[] row = file.getString(key + digit).split(" ", -1);
        double all = 0;
        for (int as = 0; as <= 9; as++) {
            table[digit][as] = as == digit ? 0 : Double.parseDouble(row[as]);
            all += table[digit][as];
        }
        for (int as = 0; as <= 9; as++) {
            table[digit][as] /= all;
        }
    }

    /// The weight of `way` among the ways of its kind.
    static double of(Way way) {
        return WAYS[way.index()];
    }

    /// The chance that a misread `digit` is read as `as`; the nine others sum to 1.
    static double misread(int digit, int as) {
        return READ_AS[digit][as];
    }

    /// The chance that a misheard `digit` is heard as `as`; the nine others sum to 1.
    static double misheard(int digit, int as) {
        return HEARD_AS[digit][as];
    }
}
