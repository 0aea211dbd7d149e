package tamabako.desk.paper;

import java.util.List;
import java.util.Map;
import tamabako.frame.Technique;

/// What the page of papers that were made shows.
///
/// @param id the name of the forms
/// @param keepsCustoms whether they were set with the customs of setters
/// @param hasPads whether a section is worked from slip pads
/// @param forms each form
/// @param spreads by how many per cent the forms differ, by the word of each feature
/// @param sections the names of the sections
public record FormsView(
        String id,
        String ladder,
        String grade,
        String day,
        boolean keepsCustoms,
        boolean hasPads,
        boolean hasScript,
        List<FormView> forms,
        Map<String, String> spreads,
        List<String> sections) {

    private static final int LETTERS = 26;

    public FormsView {
        forms = List.copyOf(forms);
        spreads = Map.copyOf(spreads);
        sections = List.copyOf(sections);
    }

    /// One form.
    ///
    /// @param paperId its printed name
    /// @param digits digits of all numbers given
    /// @param time the expected time in words
    /// @param steps how many steps are by each technique
    public record FormView(
            int form,
            String paperId,
            int strokes,
            int motions,
            int digits,
            String time,
            Map<Technique, Integer> steps) {

        public FormView {
            steps = Map.copyOf(steps);
        }

        /// The letter that is printed on it, A for the first; a number after Z.
        public String letter() {
            return form <= LETTERS ? String.valueOf((char) ('A' + form - 1)) : "" + form;
        }

        /// How many steps are by that technique.
        public int steps(Technique technique) {
            return steps.getOrDefault(technique, 0);
        }
    }

    /// The techniques, in the order in which they are taught.
    public List<Technique> techniques() {
        return List.of(Technique.values());
    }

    /// By how much the forms differ in a feature, such as `0.1 %`.
    public String spread(String feature) {
        return spreads.getOrDefault(feature, "");
    }
}
