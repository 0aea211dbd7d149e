package tamabako.problems;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import tamabako.problems.words.ProblemWords;

/// What was read from a file or a package of files: the problems, and what is wrong with the rest.
///
/// @param problems the problems that could be read, in their order
/// @param faults what could not be read, in its order
public record ProblemFile(List<Problem> problems, List<Fault> faults) {

    public ProblemFile {
        problems = List.copyOf(problems);
        faults = List.copyOf(faults);
    }

    /// Something that could not be read.
    ///
    /// @param file the file inside a package; empty where there is only one
    /// @param line the line it stands on, from 1; 0 where none is to blame
    /// @param what what is wrong and how to mend it
    public record Fault(String file, int line, Unreadable what) {

        /// Where and what, and how to mend it, in the language of `locale`.
        public String message(Locale locale) {
            String told = what.message(locale);
            if (line > 0) {
                told =
                        ProblemWords.of(locale)
                                .say("unreadable.on-line", Map.of("line", line, "what", told));
            }
            return file.isEmpty() ? told : file + ": " + told;
        }
    }

    /// Whether all of it could be read.
    public boolean isWhole() {
        return faults.isEmpty();
    }
}
