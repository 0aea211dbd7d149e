package tamabako.desk.command;

import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tamabako.desk.work.UnitRod;
import tamabako.desk.work.WorkWay;
import tamabako.frame.CarryOrder;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.SquareRootWay;
import tamabako.frame.TrialRule;
import tamabako.problems.Terms;

/// The options that say how a sum is to be worked.
final class WorkOptions {

    /// The frame kinds by their words.
    enum Kind {
        modern(FrameKind.MODERN),
        older(FrameKind.OLDER),
        suanpan(FrameKind.SUANPAN);

        private final FrameKind frame;

        Kind(FrameKind frame) {
            this.frame = frame;
        }
    }

    /// The ways of rounding by their words.
    enum Beyond {
        half_up(Rounding.HALF_UP),
        down(Rounding.DOWN);

        private final Rounding rounding;

        Beyond(Rounding rounding) {
            this.rounding = rounding;
        }

        @Override
        public String toString() {
            return name().replace('_', '-');
        }
    }

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--frame",
            defaultValue = "modern",
            description = "${COMPLETION-CANDIDATES} (default modern).")
    private Kind frame = Kind.modern;

    @Option(names = "--rods", description = "Rods of the frame, 1 to 31; else as many as needed.")
    private Optional<Integer> rods = Optional.empty();

    @Option(
            names = "--unit",
            paramLabel = "LETTER or N",
            description = "The unit rod from the left, such as H or 8; else where it is usual.")
    private Optional<String> unit = Optional.empty();

    @Option(names = "--carry-first", description = "Carry before taking off the complement.")
    private boolean carryFirst;

    @Option(
            names = "--rounded-trial",
            description = "Trial digits by the divisor's first digit rounded.")
    private boolean roundedTrial;

    @Option(names = "--double-root", description = "Square roots by the double root.")
    private boolean doubleRoot;

    @Option(names = "--places", description = "Decimal places of the answer, 0 to 12.")
    private Optional<Integer> places = Optional.empty();

    @Option(
            names = "--rounding",
            description = "What is done beyond the places: ${COMPLETION-CANDIDATES}.")
    private Optional<Beyond> rounding = Optional.empty();

    /// The way that the options ask for.
    ///
    /// @throws ParameterException if one of them cannot be
    WorkWay way() {
        if (places.filter(asked -> asked < 0 || asked > Terms.MOST_PLACES).isPresent()) {
            throw refuse(
                    "An answer has 0 to %d decimal places, not %d."
                            .formatted(Terms.MOST_PLACES, places.get()));
        }
        return new WorkWay(
                frame.frame,
                whole(rods),
                unit.map(this::unitRod),
                habits(),
                whole(places),
                rounding.map(beyond -> beyond.rounding));
    }

    private Habits habits() {
        Habits habits = Habits.COMMON;
        habits = carryFirst ? habits.with(CarryOrder.CARRY_THEN_REMOVE) : habits;
        habits = roundedTrial ? habits.with(TrialRule.ROUNDED_FIRST_DIGIT) : habits;
        return doubleRoot ? habits.with(SquareRootWay.DOUBLE_ROOT) : habits;
    }

    private UnitRod unitRod(String written) {
        return UnitRod.parse(written)
                .orElseThrow(() ->
                        refuse(
                                ("There is no rod \"%s\". Write its letter from the left, such as"
                                                + " H, or its number, such as 8.")
                                        .formatted(written)));
    }

    private static OptionalInt whole(Optional<Integer> number) {
        return number.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
