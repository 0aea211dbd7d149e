package tamabako.desk.sheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Request;
import tamabako.desk.web.Verb;
import tamabako.desk.web.Words;
import tamabako.problems.HalfWidth;

/// A form as it came, what each field stands for where nothing came, and what is wrong with it.
///
/// Reading never fails: a field that cannot be read gets a fault, and its usual value goes on in
/// its place, so that every fault of a form is told at once.
public final class Form {

    private final Fields fields;
    private final boolean isSent;
    private final Map<String, String> usual;
    private final Words words;
    private final Map<String, String> faults = new LinkedHashMap<>();

    /// @param request the form that was sent; or, where a page is only looked at, the address, in
    ///   which a field that did not come has its usual value
    /// @param usual the usual value of each field, and those that are ticked
    public Form(Request request, Map<String, String> usual) {
        this.isSent = request.verb() == Verb.POST;
        this.fields = isSent ? request.form() : request.query();
        this.usual = Map.copyOf(usual);
        this.words = request.words();
    }

    /// The field as it came, or its usual value.
    public String text(String name) {
        String missing = isSent ? "" : usual.getOrDefault(name, "");
        return fields.find(name).orElse(missing);
    }

    /// Whether the choice `name` stands at that value.
    public boolean isAt(String name, String value) {
        return text(name).equals(value);
    }

    /// Whether the box `name` with that value is ticked.
    public boolean isTicked(String name, String value) {
        boolean isUntouched = !isSent && fields.isEmpty();
        return isUntouched
                ? usual.getOrDefault(name, "").contains(value)
                : fields.all(name).contains(value);
    }

    /// A whole number between two bounds, in figures of either width.
    public int whole(String name, int least, int most) {
        String written = HalfWidth.of(text(name)).strip();
        if (written.matches("\\d{1,6}")) {
            int value = Integer.parseInt(written);
            if (value >= least && value <= most) {
                return value;
            }
        }
        blame(name, words.say("form.whole", least, most));
        String otherwise = usual.getOrDefault(name, "");
        return otherwise.isBlank() ? least : Integer.parseInt(otherwise);
    }

    /// The same where the field may be left empty.
    public OptionalInt wholeIfAny(String name, int least, int most) {
        return text(name).isBlank()
                ? OptionalInt.empty()
                : OptionalInt.of(whole(name, least, most));
    }

    /// One of the words that a choice may stand at.
    public String word(String name, Iterable<String> known) {
        String written = text(name);
        for (String word : known) {
            if (word.equals(written)) {
                return word;
            }
        }
        blame(name, words.say("form.choice"));
        return usual.getOrDefault(name, "");
    }

    /// A line of text, at most so many characters long.
    public String line(String name, int longest) {
        String written = text(name).strip().replaceAll("\\p{Cntrl}", " ");
        if (written.length() > longest) {
            blame(name, words.say("form.long", longest));
            return usual.getOrDefault(name, "");
        }
        return written;
    }

    /// Says what is wrong with a field; the first thing said stays.
    public void blame(String name, String fault) {
        faults.putIfAbsent(name, fault);
    }

    /// What is wrong with a field, if anything is.
    public Optional<String> fault(String name) {
        return Optional.ofNullable(faults.get(name));
    }

    /// Everything that is wrong, by the name of its field.
    public Map<String, String> faults() {
        return Collections.unmodifiableMap(faults);
    }

    /// Whether nothing is wrong.
    public boolean isGood() {
        return faults.isEmpty();
    }
}
