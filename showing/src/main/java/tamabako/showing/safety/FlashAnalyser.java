package tamabako.showing.safety;

import java.util.List;

/// Looks for flashes in a showing.
///
/// The limits are those of WCAG 2.2, success criterion 2.3.1, read the strict way where readings
/// differ: everything that changes at once counts together, wherever it stands; its area is that of
/// the box around it (technique G176); a number exchanged for another without a pause counts as an
/// end and a beginning; red that is saturated may not flash at all. A showing with no such flash is
/// looked at once more by the limits of broadcasting (ITU-R BT.1702), which depend on the screen's
/// brightness. The 360 ms are the nine frames at 25 a second of the guidance for broadcasters.
public final class FlashAnalyser {

    /// From this time between onsets on, in milliseconds, the size of the numbers does not matter.
    public static final double LEAST_PERIOD = 360;

    /// The brightness of white that is taken where nobody measured it, in cd/m2: a bright screen.
    public static final double USUAL_PEAK = 500;

    private static final double MOST_FLASHES = 3;
    private static final double TIRING_FLASHES = 2;
    private static final double TIRING_AFTER = 5000;

    private static final double SLACK = 1e-6;

    private FlashAnalyser() {}

    /// Looks at pictures in the order of their times.
    ///
    /// @param field what the nearest viewer sees at a glance, in the pictures' pixels
    /// @param peak the brightness of the screen's white in cd/m2
    /// @throws IllegalArgumentException if there is no picture, if they differ in size, or if a
    ///   time is before the one before it
    public static FlashReport analyse(List<Shown> shown, Field field, double peak) {
        check(shown);
        FlashReport report = report(Changes.of(shown, Luminances.WCAG), field);
        return report.verdict() == Verdict.NO_FLASH
                ? report(Changes.of(shown, Luminances.broadcast(peak)), field)
                : report;
    }

    private static void check(List<Shown> shown) {
        if (shown.isEmpty()) {
            throw new IllegalArgumentException("A showing has at least one picture.");
        }
        Picture first = shown.getFirst().picture();
        for (int k = 1; k < shown.size(); k++) {
            Picture next = shown.get(k).picture();
            if (next.width() != first.width() || next.height() != first.height()) {
                throw new IllegalArgumentException("Picture %d has another size.".formatted(k));
            }
            if (!(shown.get(k).at() >= shown.get(k - 1).at())) {
                throw new IllegalArgumentException(
                        "Picture %d comes before the one before it.".formatted(k));
            }
        }
    }

    private static FlashReport report(Changes changes, Field field) {
        double[] transitions = new double[2 * changes.pictures()];
        int found = 0;
        Extent worst = Extent.NONE;
        long ink = 0;
        for (int k = 1; k < changes.pictures(); k++) {
            for (boolean way : new boolean[] {changes.lighter(k), changes.darker(k)}) {
                if (way) {
                    transitions[found++] = changes.time(k);
                }
            }
            Extent extent = Extent.of(changes.mask(k), changes.width(), field);
            worst = extent.box() > worst.box() ? extent : worst;
            ink = Math.max(ink, extent.ink());
        }
        double flashes = OneSecond.most(transitions, found) / 2.0;
        double atOnePlace = changes.mostAtOnePlace() / 2.0;
        Onsets onsets = Onsets.of(changes);
        boolean isLarge = worst.box() > field.limit();
        double lasts = found == 0 ? 0 : transitions[found - 1] - transitions[0];
        return new FlashReport(
                verdict(changes, found, onsets, worst, ink, flashes, atOnePlace, field),
                flashes,
                atOnePlace,
                worst.boxWidth(),
                worst.boxHeight(),
                worst.box() / (field.width() * field.height()),
                ink / (field.width() * field.height()),
                onsets.shortest(),
                isLarge && flashes >= TIRING_FLASHES && lasts > TIRING_AFTER);
    }

    private static Verdict verdict(
            Changes changes,
            int transitions,
            Onsets onsets,
            Extent worst,
            long ink,
            double flashes,
            double atOnePlace,
            Field field) {
        if (changes.anyRed()) {
            return Verdict.RED;
        }
        if (transitions == 0) {
            return Verdict.NO_FLASH;
        }
        if (onsets.alternate() && onsets.shortest() >= LEAST_PERIOD - SLACK) {
            return Verdict.SLOW_ENOUGH;
        }
        if (worst.box() <= field.limit()) {
            return Verdict.SMALL_ENOUGH;
        }
        return ink <= field.limit() || flashes <= MOST_FLASHES || atOnePlace <= MOST_FLASHES
                ? Verdict.ONLY_BY_THE_LETTER
                : Verdict.TOO_MUCH;
    }
}
