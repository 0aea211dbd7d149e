package tamabako.paper.wish;

import java.util.Locale;
import tamabako.paper.words.PrintWords;

/// Says that a sheet cannot be printed as wished. Nothing has been written when it is thrown.
///
/// The [#reason()] has the values; [#message(Locale)] tells what, where and how to mend it.
public final class Unprintable extends RuntimeException {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST_SHOWN = 40;

    private final transient Reason reason;

    public Unprintable(Reason reason) {
        super(reason.message(PrintWords.of(Locale.ENGLISH)));
        this.reason = reason;
    }

    /// What was wrong, with its values.
    public Reason reason() {
        return reason;
    }

    /// What, where and how to mend it, for the person who wished for the sheet.
    public String message(Locale language) {
        return reason.message(PrintWords.of(language));
    }

    /// What was wrong.
    public sealed interface Reason {

        /// What, where and how to mend it.
        String message(PrintWords words);

        /// A sheet without problems.
        record NoProblems(String title) implements Reason {
            @Override
            public String message(PrintWords words) {
                return words.say("unprintable.no-problems", title);
            }
        }

        /// A number that is longer than a line.
        record TooWide(String problem, String number, Size size) implements Reason {
            @Override
            public String message(PrintWords words) {
                return words.say(
                        "unprintable.too-wide",
                        problem,
                        beginning(number),
                        called(size, words),
                        larger(size));
            }
        }

        /// A column with more rows than a page holds.
        record TooManyRows(String problem, int rows, int most, Size size) implements Reason {
            @Override
            public String message(PrintWords words) {
                return words.say(
                        "unprintable.too-many-rows",
                        problem,
                        rows,
                        most,
                        called(size, words),
                        larger(size));
            }
        }

        /// A character that the print font does not have, such as an emoji.
        ///
        /// @param where the key of the words that say where it stands: `title`, `pupil`, `day`,
        ///   `id`, `label`, `text`
        record NoGlyph(String character, String where, String problem) implements Reason {
            @Override
            public String message(PrintWords words) {
                String code = "U+%04X".formatted(character.codePointAt(0));
                return words.say(
                        "unprintable.no-glyph", character, code, words.say(where, problem));
            }
        }

        /// A problem of another slip pad than those before it.
        ///
        /// @param known what the line of that leaf has by an earlier problem
        /// @param amount what it has by this one
        record OtherPad(String problem, int line, int leaf, String known, String amount)
                implements Reason {
            @Override
            public String message(PrintWords words) {
                return words.say("unprintable.other-pad", problem, line, leaf, known, amount);
            }
        }

        private static String beginning(String number) {
            return number.length() > LONGEST_SHOWN
                    ? number.substring(0, LONGEST_SHOWN) + "\u2026"
                    : number;
        }

        private static String called(Size size, PrintWords words) {
            return words.say("size." + size.word());
        }

        private static int larger(Size size) {
            return size == Size.NORMAL ? 0 : 1;
        }
    }
}
