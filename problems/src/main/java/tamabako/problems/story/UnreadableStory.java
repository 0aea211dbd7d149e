package tamabako.problems.story;

import java.util.List;
import tamabako.problems.words.Sayable;

/// A file of story templates that does not fit.
public final class UnreadableStory extends IllegalArgumentException {

    private final transient Fault fault;
    private final int line;

    /// @param line counted from 1
    UnreadableStory(int line, Fault fault) {
        super("Line %d: %s".formatted(line, fault));
        this.line = line;
        this.fault = fault;
    }

    /// The line that does not fit, counted from 1.
    public int line() {
        return line;
    }

    /// What is wrong, and how to mend it.
    public Fault fault() {
        return fault;
    }

    /// What is wrong in a file of story templates.
    public sealed interface Fault extends Sayable {

        @Override
        default String topic() {
            return "story";
        }

        /// No YAML from here on.
        record NotYaml() implements Fault {}

        /// Something else where keys, a list or one value belong.
        record OtherShape(String example) implements Fault {}

        /// A key that has to be there.
        record MissingKey(String key, String example) implements Fault {}

        /// A key that is not known here.
        record UnknownKey(String key, List<String> known) implements Fault {}

        /// No grade.
        record NotAGrade(String shown) implements Fault {}

        /// A name that is none, or is taken.
        record NotAName(String shown) implements Fault {}

        /// No number, range, choice or expression of numbers given before.
        record NotGiven(String shown) implements Fault {}

        /// Nothing that numbers can keep to.
        record NotACondition(String shown, List<String> known) implements Fault {}

        /// No sum of numbers that are known there.
        record NotASum(String shown, List<String> known) implements Fault {}

        /// A blank of the story that nothing is known for.
        record UnknownBlank(String shown, List<String> known) implements Fault {}
    }
}
