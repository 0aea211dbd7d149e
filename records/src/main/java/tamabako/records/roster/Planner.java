package tamabako.records.roster;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.records.About;
import tamabako.records.Group;
import tamabako.records.Identity;
import tamabako.records.Preferences;
import tamabako.records.Pupil;

/// Works out what a roster would do to the book.
///
/// A pupil is found by the roster number, else by name and group. Blank cells leave what the book
/// has. Pupils of the demo class are known, but nobody new is put among them, for they will go.
final class Planner {

    private final Wishes wishes;
    private final Roll roll;
    private final Map<String, Group> made = new LinkedHashMap<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<Told> wrong = new ArrayList<>();
    private final List<Told> notices = new ArrayList<>();

    /// Which line a pupil came in, by the pupil's identity.
    private final Map<String, Integer> lines = new HashMap<>();

    private Planner(List<Group> groups, List<Pupil> pupils, Wishes wishes) {
        this.wishes = wishes;
        this.roll = new Roll(groups, pupils);
    }

    static Plan plan(List<Group> groups, List<Pupil> pupils, Read.Roster roster, Wishes wishes) {
        Planner planner = new Planner(groups, pupils, wishes);
        planner.wrong.addAll(roster.wrong());
        planner.notices.addAll(roster.notices());
        roster.entries().forEach(planner::take);
        planner.wrong.sort(Told.IN_ORDER);
        planner.notices.sort(Told.IN_ORDER);
        long met = pupils.stream().filter(pupil -> planner.lines.containsKey(pupil.id())).count();
        return new Plan(
                planner.steps,
                List.copyOf(planner.made.values()),
                planner.wrong,
                planner.notices,
                (int) (pupils.size() - met));
    }

    private void take(Entry entry) {
        CellReading cells = new CellReading(entry, wishes);
        if (cells.name().isEmpty()) {
            wrong.add(new Told(entry.placeOf(Field.NAME), new Remark.NoName()));
            return;
        }
        wrong.addAll(cells.wrong());
        notices.addAll(cells.notices());
        if (!cells.wrong().isEmpty()) {
            return;
        }
        switch (roll.meet(cells.id(), cells.name(), cells.group())) {
            case Roll.Met.One(Pupil pupil) -> change(entry, cells, pupil);
            case Roll.Met.Nobody() -> add(entry, cells);
            case Roll.Met.Several(Remark why) -> wrong.add(new Told(entry.place(), why));
        }
    }

    private void add(Entry entry, CellReading cells) {
        if (cells.group().isEmpty()) {
            wrong.add(new Told(entry.placeOf(Field.GROUP), new Remark.NoGroup()));
            return;
        }
        roll.elsewhere(cells.name(), cells.group())
                .filter(_ -> cells.id().isEmpty())
                .ifPresent(group ->
                        notices.add(
                                new Told(
                                        entry.place(),
                                        new Remark.SameNameElsewhere(cells.name(), group))));
        Group group = ownGroup(cells.group());
        Pupil blank =
                new Pupil(
                        Identity.fresh(),
                        group.id(),
                        cells.name(),
                        wishes.language(),
                        About.NOTHING,
                        Preferences.USUAL,
                        false);
        Pupil pupil = cells.onto(blank);
        lines.put(pupil.id(), entry.place().line());
        roll.add(pupil, group.name());
        steps.add(new Step.Added(entry.place(), pupil, group.name()));
    }

    private void change(Entry entry, CellReading cells, Pupil before) {
        Optional<Integer> above = Optional.ofNullable(lines.get(before.id()));
        if (above.isPresent()) {
            boolean byId = !cells.id().isEmpty() && cells.id().equals(before.about().rosterId());
            Remark why =
                    byId
                            ? new Remark.SameIdAbove(cells.id(), above.get())
                            : new Remark.SamePupilAbove(cells.name(), above.get());
            wrong.add(new Told(entry.place(), why));
            return;
        }
        lines.put(before.id(), entry.place().line());
        String groupBefore = roll.groupOf(before);
        boolean stays =
                cells.group().isEmpty() || Cells.key(groupBefore).equals(Cells.key(cells.group()));
        Pupil after = cells.onto(stays ? before : before.inGroup(ownGroup(cells.group()).id()));
        String groupAfter = stays ? groupBefore : cells.group();
        List<Difference> differences = Facts.differences(before, groupBefore, after, groupAfter);
        steps.add(
                differences.isEmpty()
                        ? new Step.Same(entry.place(), before, groupBefore)
                        : new Step.Changed(entry.place(), after, groupAfter, differences));
    }

    private Group ownGroup(String name) {
        return roll.ownGroup(name)
                .orElseGet(() -> made.computeIfAbsent(Cells.key(name), _ -> Group.of(name)));
    }
}
