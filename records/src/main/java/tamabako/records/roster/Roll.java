package tamabako.records.roster;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// Who is in the book, and who was added while a roster was read.
final class Roll {

    private final List<Group> groups;
    private final Map<String, String> groupNames = new HashMap<>();
    private final Map<String, List<Pupil>> byId = new HashMap<>();
    private final Map<String, List<Pupil>> byName = new HashMap<>();

    Roll(List<Group> groups, List<Pupil> pupils) {
        this.groups = List.copyOf(groups);
        groups.forEach(group -> groupNames.put(group.id(), group.name()));
        pupils.forEach(this::add);
    }

    /// Who is meant.
    sealed interface Met {
        /// This pupil.
        record One(Pupil pupil) implements Met {}

        /// Nobody who is in the book.
        record Nobody() implements Met {}

        /// Several could be.
        record Several(Remark why) implements Met {}
    }

    /// Finds a pupil by roster number, else by name and group, else, where no group is given, by a
    /// name that only one pupil has.
    Met meet(String id, String name, String group) {
        List<Pupil> sameId = id.isEmpty() ? List.of() : byId.getOrDefault(id, List.of());
        if (sameId.size() > 1) {
            return new Met.Several(new Remark.SeveralWithId(id));
        }
        if (sameId.size() == 1) {
            return new Met.One(sameId.getFirst());
        }
        Predicate<Pupil> mayBe = pupil -> id.isEmpty() || pupil.about().rosterId().isEmpty();
        List<Pupil> meant =
                byName.getOrDefault(Cells.key(name), List.of()).stream()
                        .filter(mayBe)
                        .filter(pupil ->
                                group.isEmpty()
                                        || Cells.key(groupOf(pupil)).equals(Cells.key(group)))
                        .toList();
        return switch (meant.size()) {
            case 0 -> new Met.Nobody();
            case 1 -> new Met.One(meant.getFirst());
            default -> new Met.Several(new Remark.SeveralMeant(name, group));
        };
    }

    /// The group of somebody of that name in another group, if there is one.
    Optional<String> elsewhere(String name, String group) {
        return byName.getOrDefault(Cells.key(name), List.of()).stream()
                .map(this::groupOf)
                .filter(other -> !Cells.key(other).equals(Cells.key(group)))
                .findFirst();
    }

    /// The teacher's own group of that name, if there is one.
    Optional<Group> ownGroup(String name) {
        return groups.stream()
                .filter(group -> !group.demo() && Cells.key(group.name()).equals(Cells.key(name)))
                .findFirst();
    }

    /// The name of a pupil's group.
    String groupOf(Pupil pupil) {
        return groupNames.getOrDefault(pupil.groupId(), "");
    }

    /// Adds a pupil of a group that may be new.
    void add(Pupil pupil, String group) {
        groupNames.put(pupil.groupId(), group);
        add(pupil);
    }

    private void add(Pupil pupil) {
        byName.computeIfAbsent(Cells.key(pupil.name()), _ -> new ArrayList<>()).add(pupil);
        if (!pupil.about().rosterId().isEmpty()) {
            byId.computeIfAbsent(pupil.about().rosterId(), _ -> new ArrayList<>()).add(pupil);
        }
    }
}
