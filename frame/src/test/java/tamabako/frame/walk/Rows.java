package tamabako.frame.walk;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import tamabako.testkit.Draw;

/// Draws columns to walk.
final class Rows {

    private Rows() {}

    /// One to ten rows of up to 14 digits, some of them zero, two in five taken: the total is often
    /// below zero.
    static List<BigDecimal> anySign(Draw draw, int places) {
        int count = draw.between(1, 10);
        int most = draw.oneOf(List.of(2, 6, 10, 14));
        List<BigDecimal> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            BigDecimal row = draw.decimal(draw.length(most), places);
            BigDecimal sized = draw.chance(1, 20) ? BigDecimal.ZERO : row;
            rows.add(draw.chance(2, 5) ? sized.negate() : sized);
        }
        return rows;
    }

    /// One to eight rows of up to 15 digits, half of them taken where the total allows it. Every
    /// other column is rich in nines, noughts and fives.
    static List<BigInteger> notBelowZero(Draw draw) {
        int count = draw.between(1, 8);
        boolean rich = draw.chance(1, 2);
        List<BigInteger> rows = new ArrayList<>();
        BigInteger total = BigInteger.ZERO;
        for (int i = 0; i < count; i++) {
            BigInteger row = rich ? rich(draw) : draw.whole(draw.length(15));
            if (draw.chance(1, 2) && row.compareTo(total) <= 0) {
                row = row.negate();
            }
            total = total.add(row);
            rows.add(row);
        }
        return rows;
    }

    private static BigInteger rich(Draw draw) {
        StringBuilder figures = new StringBuilder();
        for (int i = draw.length(15); i > 0; i--) {
            figures.append("0014559999".charAt(draw.between(0, 9)));
        }
        return new BigInteger(figures.toString());
    }

    static long[] packed(List<BigDecimal> rows, int places) {
        return rows.stream().mapToLong(row -> PackedNumber.pack(row, places)).toArray();
    }

    static long[] packed(List<BigInteger> rows) {
        return rows.stream().mapToLong(row -> PackedNumber.pack(row.longValueExact())).toArray();
    }
}
