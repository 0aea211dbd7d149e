package tamabako.desk.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Words;
import tamabako.problems.marking.WritingRules;

/// The answers of a form, as the teacher typed or pasted them.
///
/// @param written one answer for each problem, blank where none was given
/// @param pasted what stands in the box for pasting, to be shown again
/// @param pupil the identity of the pupil; blank for nobody
/// @param rules how strictly the form of an answer is looked at
/// @param fault what cannot be taken, and how to mend it
record Handed(
        List<String> written,
        String pasted,
        String pupil,
        WritingRules rules,
        Optional<String> fault) {

    /// The longest answer that is taken, in characters.
    static final int LONGEST = 100;

    Handed {
        written = List.copyOf(written);
    }

    /// A form that nobody has filled in yet.
    static Handed blank(int problems, Fields query) {
        List<String> none = new ArrayList<>();
        for (int i = 0; i < problems; i++) {
            none.add("");
        }
        return new Handed(none, "", query.text("pupil"), WritingRules.EASY, Optional.empty());
    }

    /// Reads a form with fields `a1`, `a2` ... and the box `pasted`, which goes before them where
    /// something stands in it.
    static Handed read(Fields form, int problems, Words words) {
        String pasted = form.find("pasted").orElse("");
        List<String> lines = pasted.strip().lines().map(String::strip).toList();
        List<String> written = new ArrayList<>();
        for (int i = 0; i < problems; i++) {
            String typed = form.text("a" + (i + 1));
            String line = i < lines.size() ? lines.get(i) : "";
            written.add(lines.isEmpty() ? typed : line);
        }
        WritingRules rules =
                form.text("rules").equals("strict") ? WritingRules.STRICT : WritingRules.EASY;
        Optional<String> fault = fault(written, lines.size(), problems, words);
        return new Handed(written, pasted, form.text("pupil"), rules, fault);
    }

    private static Optional<String> fault(
            List<String> written, int lines, int problems, Words words) {
        if (lines > problems) {
            return Optional.of(words.say("mark.too-many-lines", lines, problems));
        }
        for (int i = 0; i < problems; i++) {
            if (written.get(i).length() > LONGEST) {
                return Optional.of(words.say("mark.too-long", i + 1, LONGEST));
            }
        }
        return written.stream().allMatch(String::isBlank)
                ? Optional.of(words.say("mark.nothing"))
                : Optional.empty();
    }
}
