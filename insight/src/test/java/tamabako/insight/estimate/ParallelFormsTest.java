package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// Two forms of eight problems each, two of each content, that tell as much as they should of
/// persons of three abilities: the best two of all there are, against an integer programme's.
///
/// Papers are not made so here: they are equal by what they ask, and swaps see to it. What is tried
/// is [RaschAbility#information].
class ParallelFormsTest {

    private static final double OPTIMUM = 0.0022782335841;

    private static final Table SHOULD = Table.read("parallel-forms-information");
    private static final List<Double> ABILITIES = SHOULD.numbers("theta");

    /// Some problems as bits, and what they tell of each of three abilities.
    private record Part(long bits, double low, double middle, double high) {

        static final Part NONE = new Part(0, 0, 0, 0);

        Part and(Part other) {
            return new Part(
                    bits | other.bits, low + other.low, middle + other.middle, high + other.high);
        }

        /// The greatest distance from `other`.
        double away(Part other) {
            return Math.max(
                    Math.abs(low - other.low),
                    Math.max(Math.abs(middle - other.middle), Math.abs(high - other.high)));
        }
    }

    private static Part should() {
        List<Double> targets = SHOULD.numbers("target");
        return new Part(0, targets.get(0), targets.get(1), targets.get(2));
    }

    /// Every two problems of one content.
    private static List<Part> pairs(String content) {
        Table table = Table.read("parallel-forms").where("content", content);
        List<Part> problems = new ArrayList<>();
        for (int i = 0; i < table.rows().size(); i++) {
            List<Double> difficulty = List.of(table.numbers("b").get(i));
            List<Double> tells =
                    ABILITIES.stream()
                            .map(ability -> RaschAbility.information(difficulty, ability))
                            .toList();
            long bit = 1L << table.wholes("item").get(i);
            problems.add(new Part(bit, tells.get(0), tells.get(1), tells.get(2)));
        }
        List<Part> pairs = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            for (int j = 0; j < i; j++) {
                pairs.add(problems.get(i).and(problems.get(j)));
            }
        }
        return pairs;
    }

    /// Every form that is not farther from what it should tell than that.
    private static List<Part> forms(double most) {
        Part should = should();
        List<Part> halves = List.of(Part.NONE);
        for (String content : List.of("1", "2", "3")) {
            List<Part> pairs = pairs(content);
            halves = halves.stream().flatMap(h -> pairs.stream().map(h::and)).toList();
        }
        List<Part> last = pairs("4");
        return halves.stream()
                .flatMap(h -> last.stream().map(h::and))
                .filter(form -> form.away(should) <= most)
                .toList();
    }

    @Test
    void theFormsOfTheIntegerProgrammeTellWhatItSays() {
        for (String form : List.of("1", "2")) {
            List<Double> difficulties =
                    Table.read("parallel-forms").where("form", form).numbers("b");

            List<Double> found =
                    ABILITIES.stream().map(a -> RaschAbility.information(difficulties, a)).toList();

            Largest.between(found, SHOULD.numbers("tif_form" + form)).isAtMost(1e-9);
        }
    }

    @Test
    void noTwoFormsAreCloserThanThoseOfTheIntegerProgramme() {
        Part should = should();
        List<Part> forms = forms(1.5 * OPTIMUM);

        double best =
                forms.stream()
                        .flatMap(one -> apart(forms, one).map(o -> farther(one, o, should)))
                        .mapToDouble(x -> x)
                        .min()
                        .orElseThrow();

        assertThat(best).isCloseTo(OPTIMUM, within(1e-9));
    }

    private static Stream<Part> apart(List<Part> forms, Part one) {
        return forms.stream().filter(other -> (one.bits() & other.bits()) == 0);
    }

    private static double farther(Part one, Part other, Part should) {
        return Math.max(one.away(should), other.away(should));
    }
}
