package tamabako.problems.setting;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.setting.PublishedPapers.Line;

/// Checks the products or quotients of a stretch against the published table, and each against the
/// customs of setters. No factor ends in 0 with or without them: it would have a digit too few.
final class FactorChecker {

    private final Line line;
    private final List<Problem> problems;
    private final Complaints complaints = new Complaints();
    private final Complaints customs = new Complaints();
    private int up;
    private int down;
    private int together;
    private final Map<String, Integer> splits = new TreeMap<>();

    private FactorChecker(Line line, List<Problem> problems) {
        this.line = line;
        this.problems = problems;
    }

    /// The checker of `problems`, which has checked them.
    static FactorChecker of(Line line, List<Problem> problems) {
        FactorChecker checker = new FactorChecker(line, problems);
        checker.check();
        return checker;
    }

    /// What breaks the table.
    List<String> complaints() {
        return complaints.all();
    }

    /// What breaks a custom.
    List<String> customsBroken() {
        return customs.all();
    }

    private void check() {
        for (Problem problem : problems) {
            switch (problem) {
                case Product product -> product(product);
                case Quotient quotient -> quotient(quotient);
                default -> complaints.unless(false, problem.id(), "neither product nor quotient");
            }
        }
        if (line.has("dec")) {
            customs.unless(up >= 1, "none is rounded up");
            customs.unless(down >= 1, "none is rounded down");
        }
        complaints.unless(!line.has("up") || up >= 1, "none is rounded up");
        complaints.unless(!line.has("down") || down >= 1, "none is rounded down");
        complaints.unless(line.allows("together", together), together, "digits together");
        if (line.has("splits")) {
            Map<String, Integer> asked = new TreeMap<>();
            for (String entry : line.value("splits").split(",", -1)) {
                String[] pair = entry.split(":", 2);
                asked.put(pair[0], Integer.valueOf(pair[1]));
            }
            complaints.unless(splits.equals(asked), "splits", splits);
        }
    }

    private void product(Product product) {
        BigDecimal a = product.multiplicand();
        BigDecimal b = product.multiplier();
        lengths(product.id(), DigitCount.of(a), DigitCount.of(b));
        decimals(product.id(), a, b);
        // Digit by digit of whole numbers, then the point is put in.
        BigInteger whole = new BigInteger(bare(a)).multiply(new BigInteger(bare(b)));
        int places = a.scale() + b.scale();
        key(
                product,
                whole,
                BigInteger.TEN.pow(Math.max(0, places - asked())),
                BigInteger.TEN.pow(Math.max(0, asked() - places)));
        complaints.unless(
                !DigitCount.of(a).endsWith("0") && !DigitCount.of(b).endsWith("0"),
                product.id(),
                ": a factor ends in 0");
    }

    private void quotient(Quotient quotient) {
        BigDecimal by = quotient.divisor();
        BigDecimal of = quotient.dividend();
        lengths(quotient.id(), DigitCount.of(by), DigitCount.shortest(quotient.answer().value()));
        decimals(quotient.id(), of, by);
        int shift = by.scale() + asked() - of.scale();
        BigInteger dividend =
                new BigInteger(bare(of)).multiply(BigInteger.TEN.pow(Math.max(0, shift)));
        BigInteger divisor =
                new BigInteger(bare(by)).multiply(BigInteger.TEN.pow(Math.max(0, -shift)));
        key(quotient, dividend, divisor, BigInteger.ONE);
        complaints.unless(
                !DigitCount.of(by).endsWith("0"), quotient.id(), ": the divisor ends in 0");
    }

    /// The places that answers keep; exact answers of plain numbers are whole here.
    private int asked() {
        return line.has("places") ? Integer.parseInt(line.value("places")) : line.has("up") ? 2 : 0;
    }

    private void lengths(String id, String first, String second) {
        int all = first.length() + second.length();
        together += all;
        splits.merge(first.length() + "x" + second.length(), 1, Integer::sum);
        complaints.unless(line.allows("all", all), id, ":", all, "digits in all");
        complaints.unless(
                line.allows("first", first.length()),
                id,
                ":",
                first,
                "has",
                first.length(),
                "digits");
        complaints.unless(
                line.allows("second", second.length()),
                id,
                ":",
                second,
                "has",
                second.length(),
                "digits");
    }

    private void decimals(String id, BigDecimal one, BigDecimal other) {
        boolean has = one.scale() > 0 || other.scale() > 0;
        complaints.unless(!has || line.has("dec") || line.has("up"), id, ": decimals");
        boolean amount = line.has("unit") && one.scale() > 0;
        complaints.unless(!amount, id, ": an amount with decimals");
    }

    /// Rounds number / by half up and compares the key, in units of the last place that is kept.
    private void key(Problem problem, BigInteger number, BigInteger by, BigInteger times) {
        BigInteger[] parts = number.multiply(times).divideAndRemainder(by);
        BigInteger twice = parts[1].shiftLeft(1);
        boolean exact = parts[1].signum() == 0;
        boolean isUp = twice.compareTo(by) >= 0;
        BigInteger rounded = isUp && !exact ? parts[0].add(BigInteger.ONE) : parts[0];
        up += !exact && isUp ? 1 : 0;
        down += !exact && !isUp ? 1 : 0;
        customs.unless(!twice.equals(by), problem.id(), ": a tie");
        complaints.unless(exact || line.has("dec") || line.has("up"), problem.id(), ": not exact");
        BigDecimal key = new BigDecimal(rounded, asked());
        complaints.unless(
                key.compareTo(problem.answer().value()) == 0,
                problem.id(),
                ": key",
                problem.answer().figures(),
                ", worked",
                key);
    }

    private static String bare(BigDecimal number) {
        return number.toPlainString().replace(".", "");
    }
}
