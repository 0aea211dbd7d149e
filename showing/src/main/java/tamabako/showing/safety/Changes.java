package tamabako.showing.safety;

import java.util.BitSet;
import java.util.List;

/// The transitions of every pixel of a showing: which pixels change at which picture, and which
/// way.
///
/// A change that is spread over several pictures is one, at its last picture: a fade does not make
/// a flash less.
final class Changes {

    private final int width;
    private final int height;
    private final double[] times;
    private final BitSet[] masks;
    private final boolean[] lighter;
    private final boolean[] darker;
    private boolean red;
    private int mostAtOnePlace;

    private Changes(int width, int height, double[] times) {
        this.width = width;
        this.height = height;
        this.times = times;
        this.masks = new BitSet[times.length];
        for (int k = 0; k < masks.length; k++) {
            masks[k] = new BitSet(width * height);
        }
        this.lighter = new boolean[times.length];
        this.darker = new boolean[times.length];
    }

    static Changes of(List<Shown> shown, Luminances luminances) {
        Picture first = shown.getFirst().picture();
        double[] times = shown.stream().mapToDouble(Shown::at).toArray();
        Changes changes = new Changes(first.width(), first.height(), times);
        Picture[] pictures = shown.stream().map(Shown::picture).toArray(Picture[]::new);
        double[] own = new double[times.length];
        for (int y = 0; y < first.height(); y++) {
            for (int x = 0; x < first.width(); x++) {
                changes.walk(x, y, pictures, luminances, own);
            }
        }
        return changes;
    }

    /// Follows one pixel through the pictures; `own` is room for the times of its transitions.
    private void walk(int x, int y, Picture[] pictures, Luminances luminances, double[] own) {
        int colour = pictures[0].rgb(x, y);
        double light = Double.NaN;
        double from = Double.NaN;
        int since = 0;
        int found = 0;
        for (int k = 1; k < pictures.length; k++) {
            int next = pictures[k].rgb(x, y);
            if (next == colour) {
                continue;
            }
            if (since == 0) {
                light = Colour.of(colour).luminance();
                from = light;
                red |= Colour.of(colour).isSaturatedRed();
            }
            red |= Colour.of(next).isSaturatedRed();
            double nextLight = Colour.of(next).luminance();
            if (since > 0 && (nextLight - light) * (light - from) < 0) {
                found = note(x, y, since, from, light, luminances, own, found);
                from = light;
            }
            light = nextLight;
            since = k;
            colour = next;
        }
        if (since > 0) {
            found = note(x, y, since, from, light, luminances, own, found);
            mostAtOnePlace = Math.max(mostAtOnePlace, OneSecond.most(own, found));
        }
    }

    private int note(
            int x,
            int y,
            int k,
            double from,
            double to,
            Luminances luminances,
            double[] own,
            int found) {
        if (!luminances.isTransition(from, to)) {
            return found;
        }
        masks[k].set(y * width + x);
        lighter[k] |= to > from;
        darker[k] |= to < from;
        own[found] = times[k];
        return found + 1;
    }

    /// Whether a pixel that changes is a saturated red before or after.
    boolean anyRed() {
        return red;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /// How many pictures there are; the first changes nothing.
    int pictures() {
        return times.length;
    }

    double time(int k) {
        return times[k];
    }

    /// The pixels that change at picture `k`, row by row.
    BitSet mask(int k) {
        return masks[k];
    }

    boolean lighter(int k) {
        return lighter[k];
    }

    boolean darker(int k) {
        return darker[k];
    }

    /// Transitions in the worst second at the pixel that has most.
    int mostAtOnePlace() {
        return mostAtOnePlace;
    }
}
