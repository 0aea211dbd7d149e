package tamabako.records.roster;

import java.util.ArrayList;
import java.util.List;
import tamabako.records.Group;

/// What a roster would do to the book.
///
/// @param steps what each good line does, in their order
/// @param groups groups that are made for it
/// @param wrong lines that are left out, and why
/// @param notices what else there is to tell
/// @param others how many pupils of the book are not in the roster; nothing happens to them
public record Plan(
        List<Step> steps, List<Group> groups, List<Told> wrong, List<Told> notices, int others) {

    public Plan {
        steps = List.copyOf(steps);
        groups = List.copyOf(groups);
        wrong = List.copyOf(wrong);
        notices = List.copyOf(notices);
    }

    /// The lines that put a pupil in the book.
    public List<Step.Added> added() {
        return of(Step.Added.class);
    }

    /// The lines that change a pupil, and leave them in their group.
    public List<Step.Changed> changed() {
        return of(Step.Changed.class).stream().filter(step -> !step.moved()).toList();
    }

    /// The lines that take a pupil to another group.
    public List<Step.Changed> moved() {
        return of(Step.Changed.class).stream().filter(Step.Changed::moved).toList();
    }

    /// The lines that change nothing.
    public List<Step.Same> same() {
        return of(Step.Same.class);
    }

    /// Whether anything is to be written.
    public boolean changesSomething() {
        return steps.size() > same().size();
    }

    /// What would be done, in letters: the same for two plans that do the same.
    public String fingerprint() {
        List<String> parts = new ArrayList<>();
        for (Step step : steps) {
            parts.add(
                    switch (step) {
                        case Step.Added(Place place, var pupil, String group) ->
                                place.line() + "+" + pupil.name() + "/" + group;
                        case Step.Changed(Place place, var pupil, _, var differences) ->
                                place.line() + "~" + pupil.id() + differences;
                        case Step.Same(Place place, var pupil, _) ->
                                place.line() + "=" + pupil.id();
                    });
        }
        return Integer.toHexString(parts.hashCode());
    }

    private <S extends Step> List<S> of(Class<S> sort) {
        return steps.stream().filter(sort::isInstance).map(sort::cast).toList();
    }
}
