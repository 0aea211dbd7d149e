package tamabako.problems.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tamabako.problems.Column;
import tamabako.problems.HalfWidth;
import tamabako.problems.Numerals;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// Reads and writes one problem as a line of plain text. The format is told in docs/formats.md.
public final class ProblemText {

    /// The most characters of a line.
    private static final int LONGEST = 20_000;

    /// What may stand from the last "to" on.
    private static final Pattern PLACES =
            Pattern.compile("to *+(\\d{1,9}) *+places?", Pattern.CASE_INSENSITIVE);

    private static final Pattern ROOT =
            Pattern.compile(" *+(?:([√∛])|root *+(\\d{1,9}) *+of )", Pattern.CASE_INSENSITIVE);

    private ProblemText() {}

    /// The problem on one line. An equals sign at the end is passed over.
    ///
    /// @throws Unreadable if it is not one
    public static Problem parse(String line) {
        if (line.length() > LONGEST) {
            throw new Unreadable(new Reason.LineTooLong(line.length(), LONGEST));
        }
        String plain = HalfWidth.of(line).stripTrailing();
        int to = Math.max(plain.lastIndexOf("to"), plain.lastIndexOf("To"));
        Matcher asked = PLACES.matcher(plain.substring(Math.max(to, 0)));
        Terms terms = Terms.PLAIN;
        if (to >= 0 && asked.matches()) {
            terms = terms.withPlaces(places(asked.group(1)));
            plain = plain.substring(0, to).stripTrailing();
        }
        if (plain.endsWith("=")) {
            plain = plain.substring(0, plain.length() - 1).stripTrailing();
        }
        if (plain.isBlank()) {
            throw new Unreadable(new Reason.EmptyLine());
        }
        Matcher root = ROOT.matcher(plain);
        return root.lookingAt() ? root(root, plain, terms) : Sum.read(plain, terms);
    }

    /// The column whose rows stand on lines of their own, minus rows with a minus sign.
    ///
    /// @throws Unreadable if a row is no number; its field is the row, counted from 1
    public static Column parseColumn(List<String> rows) {
        if (rows.isEmpty()) {
            throw new Unreadable(new Reason.NoRows());
        }
        if (rows.size() > Column.MOST_ROWS) {
            throw new Unreadable(new Reason.TooManyRows(rows.size(), Column.MOST_ROWS));
        }
        List<BigDecimal> numbers = new ArrayList<>();
        for (String row : rows) {
            try {
                numbers.add(Numerals.parse(row));
            } catch (Unreadable fault) {
                throw fault.inside(Integer.toString(numbers.size() + 1));
            }
        }
        return new Column("", numbers, Terms.PLAIN);
    }

    /// The problem as a line: its numbers and its places. Its name and other terms are left out.
    public static String write(Problem problem) {
        String sum =
                switch (problem) {
                    case Column column -> column(column.rows());
                    case Product product ->
                            plain(product.multiplicand()) + " x " + plain(product.multiplier());
                    case Quotient quotient ->
                            plain(quotient.dividend()) + " / " + plain(quotient.divisor());
                    case Root root -> (root.degree() == 2 ? "√" : "∛") + plain(root.of());
                };
        OptionalInt places = problem.terms().places();
        if (places.isEmpty()) {
            return sum;
        }
        int number = places.getAsInt();
        return sum + " to " + number + (number == 1 ? " place" : " places");
    }

    private static Problem root(Matcher root, String plain, Terms terms) {
        int degree;
        if (root.group(1) != null) {
            degree = root.group(1).equals("√") ? 2 : 3;
        } else {
            degree = Integer.parseInt(root.group(2));
            if (degree != 2 && degree != 3) {
                throw new Unreadable(new Reason.OutOfRange(root.group(2), 2, 3));
            }
        }
        BigDecimal of = Sum.only(plain, root.end());
        if (of.signum() < 0) {
            throw new Unreadable(new Reason.NegativeRadicand(of.toPlainString()));
        }
        return new Root("", degree, of, terms);
    }

    private static int places(String digits) {
        int places = Integer.parseInt(digits);
        if (places > Terms.MOST_PLACES) {
            throw new Unreadable(new Reason.OutOfRange(digits, 0, Terms.MOST_PLACES));
        }
        return places;
    }

    private static String column(List<BigDecimal> rows) {
        StringBuilder line = new StringBuilder(plain(rows.getFirst()));
        for (BigDecimal row : rows.subList(1, rows.size())) {
            line.append(row.signum() < 0 ? " - " : " + ").append(plain(row.abs()));
        }
        return line.toString();
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }
}
