package tamabako.problems.grade.file;

import java.util.Locale;
import java.util.Map;
import tamabako.problems.words.ProblemWords;

/// Something in a ladder file that has to be mended.
///
/// @param file the name of the file, as it was given
/// @param line counted from 1
/// @param column the character of the line, counted from 1
/// @param fault what is wrong
public record Mistake(String file, int line, int column, Fault fault) {

    /// File, line, what is wrong and how to mend it.
    public String message(Locale locale) {
        ProblemWords words = ProblemWords.of(locale);
        return words.say("ladder.at", Map.of("file", file, "line", line, "what", words.say(fault)));
    }
}
