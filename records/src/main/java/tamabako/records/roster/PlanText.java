package tamabako.records.roster;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/// Tells a plan line by line.
public final class PlanText {

    private final RosterWords words;

    /// @param words in whose language
    public PlanText(RosterWords words) {
        this.words = words;
    }

    /// A line for each step that changes something, and for each group that is made.
    public List<String> steps(Plan plan) {
        List<String> lines = new ArrayList<>();
        plan.groups()
                .forEach(group ->
                        lines.add(words.say("plan.new-group", Map.of("group", group.name()))));
        for (Step step : plan.steps()) {
            switch (step) {
                case Step.Added added -> lines.add(added("plan.new", added));
                case Step.Changed changed -> changed(changed, lines);
                case Step.Same _ -> {}
            }
        }
        return lines;
    }

    /// What there is to tell besides.
    public List<String> notices(Plan plan) {
        return plan.notices().stream().map(words::say).toList();
    }

    /// Everything in one line of figures.
    ///
    /// @param written whether it was done, and not only planned
    public String summary(Plan plan, boolean written) {
        return words.say(
                written ? "plan.written" : "plan.would",
                Map.of(
                        "added", plan.added().size(),
                        "changed", plan.changed().size(),
                        "moved", plan.moved().size(),
                        "same", plan.same().size(),
                        "wrong", plan.wrong().size(),
                        "others", plan.others()));
    }

    /// What changes in one field.
    public String say(Difference difference) {
        String before = words.value(difference.field(), difference.before());
        return words.say(
                "plan.difference",
                Map.of(
                        "field", words.say(difference.field()),
                        "before", before.isEmpty() ? words.word("plan.nothing") : before,
                        "after", words.value(difference.field(), difference.after())));
    }

    private String added(String key, Step step) {
        return words.say(
                key,
                Map.of(
                        "line", step.place().line(),
                        "name", step.pupil().name(),
                        "group", step.group()));
    }

    private void changed(Step.Changed step, List<String> lines) {
        String what =
                String.join(
                        words.word("plan.and"),
                        step.differences().stream().map(this::say).toList());
        lines.add(
                words.say(
                        step.moved() ? "plan.moved" : "plan.changed",
                        Map.of(
                                "line", step.place().line(),
                                "name", step.pupil().name(),
                                "group", step.group(),
                                "what", what)));
    }
}
