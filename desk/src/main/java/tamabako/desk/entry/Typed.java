package tamabako.desk.entry;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Words;
import tamabako.problems.Problem;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.words.Sayable;

/// What was typed in the line of one pupil.
///
/// @param written one answer for each problem, blank where none was typed
/// @param took the time as typed
/// @param rules how strictly the form of an answer is looked at
record Typed(List<String> written, String took, WritingRules rules) {

    /// The longest answer that is taken, in characters.
    static final int LONGEST = 100;

    Typed {
        written = List.copyOf(written);
    }

    /// Reads the fields `a1`, `a2` ... and `took`.
    static Typed read(Fields form, int problems) {
        List<String> written = new ArrayList<>();
        for (int i = 1; i <= problems; i++) {
            written.add(form.text("a" + i).replaceAll("\\p{Cntrl}", " "));
        }
        String took = form.text("took").replaceAll("\\p{Cntrl}", " ");
        return new Typed(written, took, rules(form));
    }

    /// The rules that a form or an address names.
    static WritingRules rules(Fields fields) {
        return fields.text("rules").equals("strict") ? WritingRules.STRICT : WritingRules.EASY;
    }

    /// Whether nothing was typed.
    boolean isEmpty() {
        return took.isBlank() && written.stream().allMatch(String::isBlank);
    }

    /// Whether something is longer than any answer.
    boolean isTooLong() {
        return took.length() > LONGEST || written.stream().anyMatch(one -> one.length() > LONGEST);
    }

    /// What cannot be kept, and how to mend it.
    Optional<String> fault(Words words) {
        for (int i = 0; i < written.size(); i++) {
            if (written.get(i).length() > LONGEST) {
                return Optional.of(words.say("mark.too-long", i + 1, LONGEST));
            }
        }
        if (written.stream().allMatch(String::isBlank)) {
            return Optional.of(words.say("entry.nothing"));
        }
        return Clocked.read(took) instanceof Clocked.Read.Unclear
                ? Optional.of(words.say("entry.time-unclear", took))
                : Optional.empty();
    }

    /// The time, where one could be read.
    Optional<Duration> time() {
        return Clocked.read(took) instanceof Clocked.Read.Good(Optional<Duration> read)
                ? read
                : Optional.empty();
    }

    /// The mark of each answer in one word, `empty` for what was left out.
    List<String> marks(List<Problem> problems) {
        List<String> marks = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            String answer = i < written.size() ? written.get(i) : "";
            boolean isTooLong = answer.length() > LONGEST;
            marks.add(
                    isTooLong
                            ? "unclear"
                            : Sayable.word(
                                    Marker.mark(problems.get(i), answer, rules).getClass()));
        }
        return marks;
    }
}
