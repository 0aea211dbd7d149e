package tamabako.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A working on the frame: the frame it began on, every step, the frame it ended on.
///
/// Replaying the strokes of the steps from `start` gives `end`; no trace exists for which that
/// fails.
public record Trace(Frame start, List<Step> steps, Frame end) {

    public Trace {
        steps = List.copyOf(steps);
        Frame replayed = replay(start, steps);
        if (!replayed.equals(end)) {
            throw new IllegalArgumentException(
                    "These steps lead to %s, not to %s."
                            .formatted(replayed.digits(), end.digits()));
        }
    }

    /// The frame after each step, the start first: one more than there are steps.
    public List<Frame> states() {
        List<Frame> states = new ArrayList<>(steps.size() + 1);
        Frame frame = start;
        states.add(frame);
        for (Step step : steps) {
            frame = frame.with(step.rod(), step.after());
            states.add(frame);
        }
        return states;
    }

    /// The states at which a handbook would print the frame: the start, and then the state after
    /// each entry with its carries and borrows done. An entry is a run of steps that serve one
    /// cause, such as one digit of a row or one partial product.
    public List<Frame> rests() {
        List<Frame> states = states();
        List<Frame> rests = new ArrayList<>();
        rests.add(start);
        for (int i = 0; i < steps.size(); i++) {
            boolean last = i == steps.size() - 1;
            if (last || !steps.get(i).cause().entry().equals(steps.get(i + 1).cause().entry())) {
                rests.add(states.get(i + 1));
            }
        }
        return rests;
    }

    /// A step moves beads on its own rod only, so each is played on that rod alone.
    private static Frame replay(Frame start, List<Step> steps) {
        Rod[] rods = start.rods().toArray(Rod[]::new);
        for (Step step : steps) {
            Rod before = start.has(step.rod()) ? rods[step.rod() - start.lowest()] : Rod.CLEAR;
            if (!start.has(step.rod()) || !before.equals(step.before())) {
                throw new IllegalArgumentException("%s begins on %s.".formatted(step, before));
            }
            Frame alone = new Frame(start.kind(), step.rod(), List.of(before));
            rods[step.rod() - start.lowest()] = played(alone, step).rod(step.rod());
        }
        return new Frame(start.kind(), start.lowest(), Arrays.asList(rods));
    }

    private static Frame played(Frame alone, Step step) {
        Frame frame = alone;
        for (Stroke stroke : step.strokes()) {
            frame =
                    switch (frame.play(stroke)) {
                        case Played.Moved(Frame moved) -> moved;
                        case Played.Refused(_, Played.Because because) ->
                                throw new IllegalArgumentException(
                                        "%s cannot be played on %s: %s."
                                                .formatted(stroke, frame.digits(), because));
                    };
        }
        return frame;
    }
}
