package tamabako.showing.safety;

import java.util.BitSet;

/// How much of a field the pixels of one change fill.
///
/// @param boxWidth the width of the box around them, in pixels
/// @param boxHeight its height
/// @param box the most of the box that one field can hold, in square pixels
/// @param ink the most of the pixels that one field can hold
record Extent(int boxWidth, int boxHeight, double box, long ink) {

    static final Extent NONE = new Extent(0, 0, 0, 0);

    static Extent of(BitSet mask, int width, Field field) {
        int left = width;
        int right = -1;
        for (int i = mask.nextSetBit(0); i >= 0; i = mask.nextSetBit(i + 1)) {
            left = Math.min(left, i % width);
            right = Math.max(right, i % width);
        }
        if (right < 0) {
            return NONE;
        }
        int top = mask.nextSetBit(0) / width;
        int bottom = (mask.length() - 1) / width;
        int across = right - left + 1;
        int down = bottom - top + 1;
        double box = Math.min(across, field.width()) * Math.min(down, field.height());
        int[][] sums = sums(mask, width, left, top, across, down);
        return new Extent(across, down, box, most(sums, across, down, field));
    }

    /// Sums over everything above and to the left, so that any rectangle is four look-ups.
    private static int[][] sums(BitSet mask, int width, int left, int top, int across, int down) {
        int[][] sums = new int[down + 1][across + 1];
        for (int y = 0; y < down; y++) {
            int row = 0;
            for (int x = 0; x < across; x++) {
                row += mask.get((top + y) * width + left + x) ? 1 : 0;
                sums[y + 1][x + 1] = sums[y][x + 1] + row;
            }
        }
        return sums;
    }

    private static long most(int[][] sums, int across, int down, Field field) {
        int wide = Math.min(across, (int) Math.ceil(field.width()));
        int high = Math.min(down, (int) Math.ceil(field.height()));
        long most = 0;
        for (int y = 0; y + high <= down; y++) {
            for (int x = 0; x + wide <= across; x++) {
                most =
                        Math.max(
                                most,
                                (long) sums[y + high][x + wide]
                                        - sums[y][x + wide]
                                        - sums[y + high][x]
                                        + sums[y][x]);
            }
        }
        return most;
    }
}
