package tamabako.problems.making.column;

import java.util.ArrayList;
import java.util.List;

/// How often the digits are leads, whichever they are: in one long, four bits for how many of the
/// ten digits are no lead, four for how many are one lead, and so on.
///
/// The leads 1, 2, 1, 3 make seven digits no lead, two digits one lead and one digit two.
final class Leads {

    /// The most rows that are told apart like this.
    static final int MOST_ROWS = 14;

    /// Before there is any row.
    static final long NONE = 10;

    private Leads() {}

    /// With one lead more, of a digit that is a lead so many times already.
    static long with(long leads, int already) {
        return leads + (1L << (4 * already + 4)) - (1L << (4 * already));
    }

    /// Without a digit that is a lead so many times.
    static long without(long leads, int times) {
        return leads - (1L << (4 * times));
    }

    /// How many digits are leads so many times.
    static int digits(long leads, int times) {
        return (int) (leads >>> (4 * times)) & 15;
    }

    /// How often the most frequent of them is a lead.
    static int most(long leads) {
        return (Long.SIZE - 1 - Long.numberOfLeadingZeros(leads)) / 4;
    }

    /// All that `rows` rows can have, if no digit may be a lead oftener than `most` times. A zero
    /// never is one.
    static List<Long> all(int rows, int most) {
        List<Long> all = new ArrayList<>();
        collect(rows, Math.min(rows, most), 9, 1, all);
        return all;
    }

    /// Shares `rows` rows out among digits, none of which is a lead oftener than the one before.
    private static void collect(int rows, int most, int digits, long leads, List<Long> all) {
        if (digits == 0) {
            if (rows == 0) {
                all.add(leads);
            }
            return;
        }
        for (int times = Math.min(rows, most); times * digits >= rows; times--) {
            collect(rows - times, times, digits - 1, leads + (1L << (4 * times)), all);
        }
    }
}
