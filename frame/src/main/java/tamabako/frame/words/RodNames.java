package tamabako.frame.words;

import java.util.Map;
import tamabako.frame.Frame;

/// How a rod is spoken of in a sentence.
sealed interface RodNames {

    /// The rod in a sentence, such as "the tens" or "rod D".
    String of(int rod);

    /// By the place it holds: so columns are taught.
    record ByPlace(Phrases phrases) implements RodNames {
        @Override
        public String of(int rod) {
            return phrases.say("rod.place", Map.of("place", place(phrases, rod)));
        }
    }

    /// By its letter, the leftmost rod of `frame` being A, as the handbooks write products,
    /// quotients and roots; rods beyond Z by their number.
    record ByLetter(Phrases phrases, Frame frame) implements RodNames {
        private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

        @Override
        public String of(int rod) {
            int fromLeft = frame.highest() - rod;
            String letter =
                    fromLeft < LETTERS.length()
                            ? LETTERS.substring(fromLeft, fromLeft + 1)
                            : String.valueOf(fromLeft + 1);
            return phrases.say("rod.letter", Map.of("letter", letter));
        }
    }

    /// The name of a place alone, such as "tens".
    static String place(Phrases phrases, int place) {
        String key = "place." + place;
        return phrases.say(phrases.has(key) ? key : "place.other", Map.of("place", place));
    }
}
