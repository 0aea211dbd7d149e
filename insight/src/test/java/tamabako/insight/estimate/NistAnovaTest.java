package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.hipparchus.stat.inference.OneWayAnova;
import org.junit.jupiter.api.Test;

/// The library's analysis of variance against certified values.
///
/// It squares numbers as they come, so it has to be given small ones: all less the first of all,
/// which changes no variance. Without that, AtmWtAg is wrong in the second digit.
class NistAnovaTest {

    private static double f(List<double[]> groups) {
        double first = groups.getFirst()[0];
        return new OneWayAnova()
                .anovaFValue(
                        groups.stream()
                                .map(g -> Arrays.stream(g).map(x -> x - first).toArray())
                                .toList());
    }

    private static void isCertified(String name, List<double[]> groups, double tolerance) {
        Table certified = Table.read("nist-anova").where("dataset", name);
        assertThat(groups).hasSize((int) certified.number("df_between") + 1);
        double f = f(groups);
        double told = f * certified.number("df_between");
        double share = told / (told + certified.number("df_within"));
        Largest.shareBetween(
                        List.of(f, share),
                        List.of(certified.number("F"), certified.number("r_squared")))
                .isAtMost(tolerance);
    }

    private static List<double[]> groups(String name) {
        Table data = Table.read("nist-" + name.toLowerCase(Locale.ROOT));
        List<double[]> groups = new ArrayList<>();
        for (String group : data.words("treatment").stream().distinct().toList()) {
            groups.add(
                    data.where("treatment", group).numbers("response").stream()
                            .mapToDouble(x -> x)
                            .toArray());
        }
        return groups;
    }

    @Test
    void silicon() {
        isCertified("SiRstv", groups("SiRstv"), 1e-9);
    }

    @Test
    void silver() {
        isCertified("AtmWtAg", groups("AtmWtAg"), 1e-7);
    }

    /// Simon and Lesage's numbers by their rule: nine groups about .4, .3, .5, .3, .5 ..., each
    /// first its middle and then by turns a tenth below and a tenth above.
    private static List<double[]> simonLesage(String before, int size) {
        int[] middles = {4, 3, 5, 3, 5, 3, 5, 3, 5};
        List<double[]> groups = new ArrayList<>();
        for (int middle : middles) {
            double[] group = new double[size];
            for (int i = 0; i < size; i++) {
                int tenths = i == 0 ? middle : i % 2 == 1 ? middle - 1 : middle + 1;
                group[i] = Double.parseDouble(before + "." + tenths);
            }
            groups.add(group);
        }
        return groups;
    }

    /// As far as binary numbers can tell: at a million million a tenth is known to 6e-5 only.
    @Test
    void moreAndMoreDigitsInCommon() {
        List<Double> tolerances = List.of(1e-9, 1e-9, 1e-4);
        List<String> before = List.of("1", "1000000", "1000000000000");
        int[] sizes = {21, 201, 2001};
        for (int i = 0; i < before.size(); i++) {
            for (int j = 0; j < sizes.length; j++) {
                isCertified(
                        "SmLs0" + (3 * i + j + 1),
                        simonLesage(before.get(i), sizes[j]),
                        tolerances.get(i));
            }
        }
    }
}
