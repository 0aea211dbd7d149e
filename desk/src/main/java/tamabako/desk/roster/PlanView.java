package tamabako.desk.roster;

import java.util.Base64;
import java.util.List;
import tamabako.records.Group;
import tamabako.records.roster.Plan;
import tamabako.records.roster.PlanText;
import tamabako.records.roster.Read;
import tamabako.records.roster.RosterWords;
import tamabako.records.roster.Step;

/// What a roster would do, as the page shows it.
///
/// @param file what the file is called
/// @param kind what sort of file it is
/// @param group the group of those for whom the roster names none
/// @param carried the file in letters, to be sent back
/// @param seen what the plan was known by when it was shown
/// @param outdated whether the book was changed since it was looked at before
/// @param groups the names of groups that would be made
/// @param added the pupils who would be new
/// @param changed those of whom something would change
/// @param moved those who would go to another group
/// @param same how many lines change nothing
/// @param others how many pupils of the book are not in the roster
/// @param wrong the lines that are left out, and why
/// @param notices what else there is to tell
public record PlanView(
        String file,
        String kind,
        String group,
        String carried,
        String seen,
        boolean outdated,
        List<String> groups,
        List<Line> added,
        List<Line> changed,
        List<Line> moved,
        int same,
        int others,
        List<String> wrong,
        List<String> notices) {

    public PlanView {
        groups = List.copyOf(groups);
        added = List.copyOf(added);
        changed = List.copyOf(changed);
        moved = List.copyOf(moved);
        wrong = List.copyOf(wrong);
        notices = List.copyOf(notices);
    }

    /// One line of the roster.
    ///
    /// @param number which
    /// @param name the pupil's name
    /// @param group the pupil's group afterwards
    /// @param changes what changes, with the old and the new value
    public record Line(int number, String name, String group, List<String> changes) {
        public Line {
            changes = List.copyOf(changes);
        }
    }

    /// Whether there is anything to write.
    public boolean changesSomething() {
        return !added.isEmpty() || !changed.isEmpty() || !moved.isEmpty();
    }

    static PlanView of(
            RosterPages.Carried carried,
            Read.Kind kind,
            Plan plan,
            boolean outdated,
            RosterWords words) {
        PlanText text = new PlanText(words);
        return new PlanView(
                carried.file().name(),
                words.say(kind),
                carried.group(),
                Base64.getEncoder().encodeToString(carried.file().bytes()),
                plan.fingerprint(),
                outdated,
                plan.groups().stream().map(Group::name).toList(),
                plan.added().stream().map(step -> line(step, List.of())).toList(),
                plan.changed().stream().map(step -> changed(step, text)).toList(),
                plan.moved().stream().map(step -> changed(step, text)).toList(),
                plan.same().size(),
                plan.others(),
                plan.wrong().stream().map(words::say).toList(),
                plan.notices().stream().map(words::say).toList());
    }

    private static Line changed(Step.Changed step, PlanText text) {
        return line(step, step.differences().stream().map(text::say).toList());
    }

    private static Line line(Step step, List<String> changes) {
        return new Line(step.place().line(), step.pupil().name(), step.group(), changes);
    }
}
