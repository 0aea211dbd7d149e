package tamabako.desk.command;

import picocli.CommandLine.Option;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;

/// The options of `make` that say what products, quotients and roots are like.
final class FactorOptions {

    @Option(
            names = "--multiplicand",
            defaultValue = "2",
            description = "Digits of the multiplicand (default 2).")
    private int multiplicand;

    @Option(
            names = "--multiplier",
            defaultValue = "1",
            description = "Digits of the multiplier (default 1).")
    private int multiplier;

    @Option(
            names = "--divisor",
            defaultValue = "1",
            description = "Digits of the divisor (default 1).")
    private int divisor;

    @Option(
            names = "--quotient",
            defaultValue = "2",
            description = "Digits of the quotient (default 2).")
    private int quotient;

    @Option(names = "--degree", defaultValue = "2", description = "2 or 3 (default 2).")
    private int degree;

    @Option(
            names = "--root-digits",
            defaultValue = "2",
            description = "Digits of the root (default 2).")
    private int rootDigits;

    ProductWish product() {
        return new ProductWish(multiplicand, multiplier);
    }

    QuotientWish quotient() {
        return new QuotientWish(divisor, quotient);
    }

    RootWish root() {
        return new RootWish(degree, rootDigits);
    }
}
