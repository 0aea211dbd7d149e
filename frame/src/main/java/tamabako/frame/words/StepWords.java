package tamabako.frame.words;

import java.util.List;
import java.util.Locale;
import java.util.Map;
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
public final class StepWords {

    private final Phrases phrases;

    private StepWords(Phrases phrases) {
        this.phrases = phrases;
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static StepWords of(Locale locale) {
        return new StepWords(Phrases.of(Phrases.class, locale));
    }

    /// The language that is spoken.
    public Locale language() {
        return phrases.language();
    }

    /// One sentence for each step of `trace`, which read well one after another: a borrow names the
    /// digit that calls for it, a row is named where it begins, a product is told once for both its
    /// digits. The rods of a column go by their places, those of other work by letters from the
    /// left, as the handbooks print them.
    public List<String> say(Trace trace) {
        return Narration.of(trace, phrases);
    }

    /// One step, said alone; its rod goes by its place.
    public String say(Step step) {
        return new Saying(phrases, new RodNames.ByPlace(phrases)).alone(step);
    }

    /// The bead formula of a step, such as `+8 = −2 +10`; the complement comes off before the
    /// carry. It is the same in every language.
    public String brief(Step step) {
        return brief(step, CarryOrder.REMOVE_THEN_CARRY);
    }

    /// The bead formula of a step, the carry where `order` puts it.
    public String brief(Step step, CarryOrder order) {
        return Formula.of(step, order);
    }

    /// What asked for a step, in a few words, such as "row 2" or "6 × 4 = 24".
    public String label(Cause cause) {
        return new CauseWords(phrases).label(cause);
    }

    /// The name of a technique.
    public String name(Technique technique) {
        return phrases.say("technique." + technique.word(), Map.of());
    }

    /// The name of the place `10^place`: ones, tens, tenths.
    public String place(int place) {
        return RodNames.place(phrases, place);
    }

    /// Which fingers move which beads, such as "thumb: 3 lower beads up; forefinger: upper bead
    /// down".
    public String motion(Motion motion, Fingering fingering) {
        return new HandWords(phrases, fingering).say(motion);
    }

    /// Why a sum cannot be worked, and how to mend that.
    public String why(Unworkable.Reason reason) {
        return new ReasonWords(phrases).why(reason);
    }

    /// Why beads did not move, and what to do.
    public String why(Played.Refused refused) {
        return new ReasonWords(phrases).why(refused);
    }

    /// What a rod looks like: its count and its beads at the beam.
    public String read(Rod rod) {
        return new FrameWords(phrases).read(rod);
    }

    /// What a frame looks like: its number, then each rod that is not clear.
    public String read(Frame frame) {
        return new FrameWords(phrases).read(frame);
    }

    /// The answer, as a teacher reads it off the frame.
    public String answer(Outcome outcome) {
        return new AnswerWords(phrases).read(outcome);
    }
}
