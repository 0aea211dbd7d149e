package tamabako.insight.slip;

import java.math.BigDecimal;
import tamabako.frame.Cause;
import tamabako.problems.Root;

/// The slips of a root that its answer can show: the radicand read or set wrong, and one digit of
/// the root one too small or too large.
final class RootSlips {

    private final Root root;
    private final long answer;
    private final int places;
    private final Events events;

    /// @param answer the right answer in units of `places` decimals
    RootSlips(Root root, long answer, int places, Events events) {
        this.root = root;
        this.answer = answer;
        this.places = places;
        this.events = events;
    }

    /// Adds them.
    void add() {
        Scaled.of(root.of())
                .ifPresent(of ->
                        new OperandSlips(root.terms().mode(), events)
                                .add(
                                        Cause.Operand.RADICAND,
                                        of.units(),
                                        -of.places(),
                                        this::tenthsOfRadicand));
        for (int place = 0; place < Tens.length(answer); place++) {
            int digit = Tens.digit(answer, place);
            int mark = events.mark();
            digit(place, digit, digit - 1);
            digit(place, digit, digit + 1);
            events.share(mark, 1);
        }
    }

    private void digit(int place, int digit, int set) {
        if (set >= 0 && set <= 9) {
            long code = Code.of(Way.ROOT_DIGIT_OFF, Code.answer(), place - places);
            events.add(10L * (set - digit) * Tens.power(place), Code.with(code, digit, set));
        }
    }

    private long tenthsOfRadicand(long change) {
        BigDecimal changed =
                root.of().add(BigDecimal.valueOf(change, Math.max(0, root.of().scale())));
        if (changed.signum() < 0) {
            return 0;
        }
        BigDecimal value =
                new Root(root.id(), root.degree(), changed, root.terms()).answer().value();
        return Scaled.of(value, places).map(read -> 10 * (read.units() - answer)).orElse(0L);
    }
}
