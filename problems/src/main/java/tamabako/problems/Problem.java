package tamabako.problems;

import java.util.Optional;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Working;

/// Something to be worked: a column, a product, a quotient or a root.
public sealed interface Problem permits Column, Product, Quotient, Root {

    /// The name of the problem on its sheet, such as its number.
    String id();

    /// Under what terms it is answered.
    Terms terms();

    /// The right answer, by exact decimal arithmetic.
    Answer answer();

    /// The problem worked bead by bead.
    ///
    /// @throws tamabako.frame.Unworkable if the frame of `setup` is too short
    Working work(Setup setup);

    /// The same problem under another name.
    Problem withId(String id);

    /// The word for this kind of problem in files and commands: `column`, `product`, `quotient`,
    /// `root`.
    default String kind() {
        return switch (this) {
            case Column _ -> "column";
            case Product _ -> "product";
            case Quotient _ -> "quotient";
            case Root _ -> "root";
        };
    }

    /// How this problem is rounded: as its terms say; else half up where a unit or decimal places
    /// are asked for, and down, with a remainder, where not.
    default Rounding rounding() {
        Optional<Rounding> asked = terms().rounding();
        boolean places = terms().places().orElse(0) > 0;
        return asked.orElse(
                places || terms().unit().isPresent() ? Rounding.HALF_UP : Rounding.DOWN);
    }
}
