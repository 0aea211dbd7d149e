package tamabako.frame.walk;

import java.math.BigInteger;
import java.util.EnumMap;
import java.util.List;
import java.util.stream.Stream;
import tamabako.frame.Rod;
import tamabako.frame.Technique;

/// Works a column the slow and plain way: digits in an array, a rod at a time, techniques looked up
/// one by one and totals in [BigInteger]. It shares nothing with the walk but [Technique] and
/// [Rod].
final class DigitByDigit {

    private final int[] rods = new int[40];
    private final EnumMap<Technique, Integer> techniques = new EnumMap<>(Technique.class);
    private int steps;
    private int carries;
    private int borrows;
    private int strokes;
    private int settingSteps;
    private int settingStrokes;

    /// Works whole `rows` whose total is never below zero.
    static Counts work(List<BigInteger> rows) {
        DigitByDigit work = new DigitByDigit();
        BigInteger total = BigInteger.ZERO;
        for (int i = 0; i < rows.size(); i++) {
            work.row(rows.get(i));
            total = total.add(rows.get(i));
            if (i == 0) {
                work.settingSteps = work.steps;
                work.settingStrokes = work.strokes;
            }
        }
        return work.counts(total);
    }

    private Counts counts(BigInteger total) {
        return new Counts(
                total,
                Stream.of(Technique.values())
                        .map(technique -> techniques.getOrDefault(technique, 0))
                        .toList(),
                carries,
                borrows,
                strokes,
                settingSteps,
                settingStrokes,
                false);
    }

    private void row(BigInteger row) {
        String figures = row.abs().toString();
        for (int i = 0; i < figures.length(); i++) {
            int rod = figures.length() - 1 - i;
            int digit = figures.charAt(i) - '0';
            if (digit != 0 && row.signum() > 0) {
                add(rod, digit);
            } else if (digit != 0) {
                take(rod, digit);
            }
        }
    }

    private void add(int rod, int digit) {
        Technique technique = Technique.ofAdding(rods[rod], digit);
        show(rod, (rods[rod] + digit) % 10, technique);
        if (technique.passesTen()) {
            carries++;
            add(rod + 1, 1);
        }
    }

    private void take(int rod, int digit) {
        Technique technique = Technique.ofTaking(rods[rod], digit);
        if (technique.passesTen()) {
            borrows++;
            take(rod + 1, 1);
        }
        show(rod, (rods[rod] + 10 - digit) % 10, technique);
    }

    private void show(int rod, int digit, Technique technique) {
        Rod before = Rod.showing(rods[rod]);
        Rod after = Rod.showing(digit);
        techniques.merge(technique, 1, Integer::sum);
        steps++;
        strokes += before.upper() == after.upper() ? 0 : 1;
        strokes += before.lower() == after.lower() ? 0 : 1;
        rods[rod] = digit;
    }
}
