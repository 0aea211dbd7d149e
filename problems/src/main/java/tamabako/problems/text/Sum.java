package tamabako.problems.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import tamabako.problems.Column;
import tamabako.problems.Numerals;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Terms;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// Reads numbers with signs between them, from the left. Positions in faults count characters of
/// the line from 1.
final class Sum {

    private final String line;
    private final List<BigDecimal> numbers = new ArrayList<>();
    private int at;

    /// `+` for a column, `x` for a product, `/` for a quotient; `+` too while only one number is
    /// read.
    private char kind = '+';

    private Sum(String line) {
        this.line = line;
    }

    /// The column, product or quotient on a half-width line.
    static Problem read(String line, Terms terms) {
        return new Sum(line).problem(terms);
    }

    /// The only number on the rest of `line` from the index `from` on.
    static BigDecimal only(String line, int from) {
        Sum sum = new Sum(line);
        sum.at = from;
        sum.number(true);
        if (!sum.isAtEnd()) {
            throw sum.noPlace();
        }
        return sum.numbers.getFirst();
    }

    private Problem problem(Terms terms) {
        number(true);
        while (!isAtEnd()) {
            char sign = sign();
            number(sign == 'x' || sign == '/');
            if (sign == '-') {
                numbers.add(numbers.removeLast().negate());
            }
        }
        if (numbers.size() > Column.MOST_ROWS) {
            throw new Unreadable(new Reason.TooManyRows(numbers.size(), Column.MOST_ROWS));
        }
        return switch (kind) {
            case 'x' -> new Product("", numbers.getFirst(), numbers.getLast(), terms);
            case '/' -> quotient(terms);
            default -> new Column("", numbers, terms);
        };
    }

    private Quotient quotient(Terms terms) {
        BigDecimal dividend = numbers.getFirst();
        BigDecimal divisor = numbers.getLast();
        if (divisor.signum() == 0) {
            throw new Unreadable(new Reason.ZeroDivisor(dividend.toPlainString()));
        }
        return new Quotient("", dividend, divisor, terms);
    }

    /// Reads the sign between two numbers.
    private char sign() {
        char sign = line.charAt(at);
        if ("+-x/".indexOf(sign) < 0) {
            throw noPlace();
        }
        char asked = sign == '-' ? '+' : sign;
        if (numbers.size() > 1 && asked != kind) {
            throw new Unreadable(new Reason.OtherKind(figure(), at + 1));
        }
        if (numbers.size() > 1 && asked != '+') {
            throw new Unreadable(new Reason.TwoNumbersOnly(figure(), at + 1));
        }
        kind = asked;
        at++;
        return sign;
    }

    /// Reads a number, with a sign of its own if `signed`.
    private void number(boolean signed) {
        skipBlanks();
        int start = at;
        if (signed && at < line.length() && isOneOf("+-")) {
            at++;
            skipBlanks();
        }
        int digits = at;
        while (at < line.length() && isOneOf("0123456789.,")) {
            at++;
        }
        if (at == digits) {
            throw missing();
        }
        try {
            BigDecimal number = Numerals.parse(line.substring(digits, at));
            numbers.add(line.charAt(start) == '-' ? number.negate() : number);
        } catch (Unreadable fault) {
            throw atLine(fault.reason(), digits);
        }
    }

    private Unreadable missing() {
        if (at == line.length() || isOneOf("x/")) {
            return new Unreadable(new Reason.NumberMissing(at + 1));
        }
        return isOneOf("+-") ? new Unreadable(new Reason.SecondSign(figure(), at + 1)) : noPlace();
    }

    /// The fault of a number as a fault of the line.
    private Unreadable atLine(Reason reason, int start) {
        return switch (reason) {
            case Reason.NotADigit(_, String figure, int position) ->
                    new Unreadable(new Reason.NoPlaceFor(figure, start + position));
            case Reason.CommaMisplaced(_, int position) ->
                    new Unreadable(
                            new Reason.CommaMisplaced(
                                    Unreadable.shown(line.strip()), start + position));
            default -> new Unreadable(reason);
        };
    }

    private Unreadable noPlace() {
        return new Unreadable(new Reason.NoPlaceFor(figure(), at + 1));
    }

    private String figure() {
        return Character.toString(line.codePointAt(at));
    }

    private boolean isOneOf(String figures) {
        return figures.indexOf(line.charAt(at)) >= 0;
    }

    private boolean isAtEnd() {
        skipBlanks();
        return at == line.length();
    }

    private void skipBlanks() {
        while (at < line.length() && line.charAt(at) == ' ') {
            at++;
        }
    }
}
