package tamabako.problems.story;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;

/// An arithmetic formula worked with fractions, apart from everything that makes stories.
final class Formula {

    private record Fraction(BigInteger over, BigInteger under) {

        static Fraction of(BigDecimal number) {
            BigDecimal scaled = number.setScale(Math.max(0, number.scale()));
            return new Fraction(scaled.unscaledValue(), BigInteger.TEN.pow(scaled.scale()));
        }

        Fraction plus(Fraction other, int sign) {
            BigInteger more = other.over.multiply(under).multiply(BigInteger.valueOf(sign));
            return new Fraction(over.multiply(other.under).add(more), under.multiply(other.under));
        }

        Fraction times(Fraction other) {
            return new Fraction(over.multiply(other.over), under.multiply(other.under));
        }

        Fraction by(Fraction other) {
            return new Fraction(over.multiply(other.under), under.multiply(other.over));
        }
    }

    private final String text;
    private final List<BigDecimal> numbers;
    private int at;

    private Formula(String text, List<BigDecimal> numbers) {
        this.text = text.replace(" ", "");
        this.numbers = numbers;
    }

    /// The value of `formula`, exact, or rounded half up to the places behind its bar.
    static BigDecimal value(String formula, List<BigDecimal> numbers) {
        String[] parts = formula.split("\\|", 2);
        Fraction value = new Formula(parts[0], numbers).sum();
        BigDecimal over = new BigDecimal(value.over);
        BigDecimal under = new BigDecimal(value.under);
        return parts.length == 1
                ? over.divide(under)
                : over.divide(under, Integer.parseInt(parts[1].strip()), RoundingMode.HALF_UP);
    }

    private Fraction sum() {
        Fraction value = product();
        while (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
            int sign = text.charAt(at++) == '+' ? 1 : -1;
            value = value.plus(product(), sign);
        }
        return value;
    }

    private Fraction product() {
        Fraction value = factor();
        while (at < text.length() && "*/".indexOf(text.charAt(at)) >= 0) {
            boolean times = text.charAt(at++) == '*';
            Fraction next = factor();
            value = times ? value.times(next) : value.by(next);
        }
        return value;
    }

    private Fraction factor() {
        if (text.charAt(at) == '(') {
            at++;
            Fraction value = sum();
            at++;
            return value;
        }
        boolean read = text.charAt(at) == '#';
        int from = read ? ++at : at;
        while (at < text.length() && Character.isDigit(text.charAt(at))) {
            at++;
        }
        int number = Integer.parseInt(text.substring(from, at));
        return Fraction.of(read ? numbers.get(number - 1) : BigDecimal.valueOf(number));
    }
}
