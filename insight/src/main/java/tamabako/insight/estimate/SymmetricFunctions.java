package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.CalculusFieldElement;

/// The elementary symmetric functions: for each r, the sum of the products of every r of the terms.
///
/// In a Rasch model they are how likely a score of r is, whichever problems were right. By sums
/// alone, so that positive terms lose no digit.
///
/// Source: Fischer, Einführung in die Theorie psychologischer Tests (1974); Verhelst, Glas and van
/// der Sluis, Computational Statistics Quarterly 1 (1984).
final class SymmetricFunctions {

    private SymmetricFunctions() {}

    /// From r = 0, which is one, to as many as there are terms, which is the product of all.
    static <T extends CalculusFieldElement<T>> List<T> of(List<T> terms) {
        T one = terms.getFirst().getField().getOne();
        List<T> sums = new ArrayList<>(List.of(one));
        for (T term : terms) {
            sums.add(sums.getLast().multiply(term));
            for (int r = sums.size() - 2; r > 0; r--) {
                sums.set(r, sums.get(r).add(sums.get(r - 1).multiply(term)));
            }
        }
        return sums;
    }
}
