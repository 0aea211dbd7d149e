package tamabako.frame.words;

import java.util.List;
import java.util.Locale;
import tamabako.frame.CarryOrder;
import tamabako.frame.Cause;
import tamabako.frame.Fingering;
import tamabako.frame.Frame;
import tamabako.frame.Motion;
import tamabako.frame.Outcome;
import tamabako.frame.Played;
import tamabako.frame.Rod;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.frame.Trace;
import tamabako.frame.Unworkable;

/// Says what a hand does on a frame, in one language.
@SuppressWarnings({"DoNotCallSuggester", "UnusedVariable"})
public final class StepWords {

    private final Locale language;

    private StepWords(Locale language) {
        this.language = language;
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static StepWords of(Locale locale) {
        return new StepWords(locale);
    }

    /// The language that is spoken.
    public Locale language() {
        return language;
    }

    /// One sentence for each step of `trace`, which read well one after another: they name the
    /// digit that a borrow is for, the row where it begins, and the rods by letter where places
    /// would mislead.
    public List<String> say(Trace trace) {
        throw new UnsupportedOperationException();
    }

    /// One step, said alone.
    public String say(Step step) {
        throw new UnsupportedOperationException();
    }

    /// The bead formula of a step, such as `+8 = −2 +10`; the complement comes off before the
    /// carry.
    public String brief(Step step) {
        return brief(step, CarryOrder.REMOVE_THEN_CARRY);
    }

    /// The bead formula of a step, the carry where `order` puts it.
    public String brief(Step step, CarryOrder order) {
        throw new UnsupportedOperationException();
    }

    /// What asked for a step, in a few words, such as "row 2" or "6 × 4 = 24".
    public String label(Cause cause) {
        throw new UnsupportedOperationException();
    }

    /// The name of a technique.
    public String name(Technique technique) {
        throw new UnsupportedOperationException();
    }

    /// The name of the place `10^place`: ones, tens, tenths.
    public String place(int place) {
        throw new UnsupportedOperationException();
    }

    /// Which fingers move which beads.
    public String motion(Motion motion, Fingering fingering) {
        throw new UnsupportedOperationException();
    }

    /// Why a sum cannot be worked, and how to mend that.
    public String why(Unworkable.Reason reason) {
        throw new UnsupportedOperationException();
    }

    /// Why beads did not move, and what to do.
    public String why(Played.Refused refused) {
        throw new UnsupportedOperationException();
    }

    /// What a rod looks like: its count and its beads at the beam.
    public String read(Rod rod) {
        throw new UnsupportedOperationException();
    }

    /// What a frame looks like: its number, then each rod that is not clear.
    public String read(Frame frame) {
        throw new UnsupportedOperationException();
    }

    /// The answer, as a teacher reads it off the frame.
    public String answer(Outcome outcome) {
        throw new UnsupportedOperationException();
    }
}
