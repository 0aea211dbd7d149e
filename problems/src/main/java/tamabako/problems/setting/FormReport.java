package tamabako.problems.setting;

import java.util.Collection;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.effort.Effort;

/// What each form of a paper asks of a pupil, side by side.
///
/// @param forms in the order of the forms
public record FormReport(List<FormLoad> forms) {

    public FormReport {
        forms = List.copyOf(forms);
    }

    /// Counts the work of these papers.
    ///
    /// @throws tamabako.frame.Unworkable if a problem does not fit the longest frame
    public static FormReport of(List<Paper> papers) {
        return new FormReport(papers.stream().map(FormLoad::of).toList());
    }

    /// One form.
    ///
    /// @param form its number, from 1
    /// @param sections in the order of the paper
    /// @param whole the paper as a whole
    public record FormLoad(int form, List<SectionLoad> sections, Load whole) {

        public FormLoad {
            sections = List.copyOf(sections);
        }

        static FormLoad of(Paper paper) {
            List<SectionLoad> sections =
                    paper.sections().stream()
                            .map(section ->
                                    new SectionLoad(
                                            section.section().id(), Load.of(section.problems())))
                            .toList();
            Load whole = sections.stream().map(SectionLoad::load).reduce(Load.NONE, Load::plus);
            return new FormLoad(paper.form(), sections, whole);
        }
    }

    /// One section of a form.
    ///
    /// @param section the name that it goes by within its grade
    public record SectionLoad(String section, Load load) {}

    /// What some problems ask of a pupil.
    ///
    /// @param effort strokes, motions, techniques and expected seconds
    /// @param digits digits of all numbers given (sōjisū)
    public record Load(Effort effort, int digits) {

        /// Nothing to do.
        public static final Load NONE = new Load(Effort.NONE, 0);

        /// What these problems ask together.
        public static Load of(Collection<? extends Problem> problems) {
            int digits = problems.stream().mapToInt(Load::digits).sum();
            return new Load(Effort.of(problems), digits);
        }

        /// Both together.
        public Load plus(Load other) {
            return new Load(effort.plus(other.effort), digits + other.digits);
        }

        private static int digits(Problem problem) {
            return switch (problem) {
                case Column column -> column.rows().stream().mapToInt(row -> row.precision()).sum();
                case Product product ->
                        product.multiplicand().precision() + product.multiplier().precision();
                case Quotient quotient ->
                        quotient.dividend().precision() + quotient.divisor().precision();
                case Root root -> root.of().precision();
            };
        }
    }

    /// By what share of their mean the strokes of the forms differ: the most less the fewest; 0
    /// where all are equal.
    public double spreadOfStrokes() {
        return spread(load -> load.effort().strokes());
    }

    /// The same of the motions.
    public double spreadOfMotions() {
        return spread(load -> load.effort().motions());
    }

    /// The same of the expected seconds.
    public double spreadOfSeconds() {
        return spread(load -> load.effort().seconds());
    }

    /// The same of the steps by `technique`.
    public double spreadOf(Technique technique) {
        return spread(load -> load.effort().count(technique));
    }

    private double spread(ToDoubleFunction<Load> measure) {
        var sizes = forms.stream().map(FormLoad::whole).mapToDouble(measure).summaryStatistics();
        return sizes.getSum() == 0 ? 0 : (sizes.getMax() - sizes.getMin()) / sizes.getAverage();
    }
}
