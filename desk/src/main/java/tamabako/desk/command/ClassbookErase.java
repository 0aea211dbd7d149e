package tamabako.desk.command;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.desk.room.journal.Rooms;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// `classbook erase`: a pupil and all that is kept of the pupil.
@Command(
        name = "erase",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Erases a pupil with all work, notes, attendance and results. It cannot be taken back.",
            "A room that is open lets go of the pupil too, also where the desk is running.",
            "Without --yes it only shows who would be erased. Backups made before still hold the pupil."
        },
        footer = {
            "",
            "Examples:",
            "  tamabako classbook erase Aoi --group \"Tuesday juniors\"",
            "  tamabako classbook erase Aoi --group \"Tuesday juniors\" --yes",
            "",
            "Exits with 0, with 1 if there is no such pupil or several, or with 2."
        })
final class ClassbookErase implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "PUPIL", description = "The name, or the roster id.")
    private String wanted = "";

    @Option(names = "--group", description = "The name of the pupil's group.")
    private Optional<String> group = Optional.empty();

    @Option(names = "--yes", description = "Erases the pupil.")
    private boolean yes;

    @Mixin private BookPlace place = new BookPlace();

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        try (ClassBook book = place.openExisting()) {
            List<Pupil> found = found(book);
            if (found.size() != 1) {
                err.println(
                        found.isEmpty()
                                ? "There is no pupil \"%s\" here. Check the name, the group and the class book."
                                        .formatted(wanted)
                                : "Several pupils could be meant (%s). Name the group with --group, or give the roster id."
                                        .formatted(groups(book, found)));
                return Exit.SOME_WRONG;
            }
            Pupil pupil = found.getFirst();
            String who = "%s (%s)".formatted(pupil.name(), groups(book, found));
            int work = book.work().of(pupil.id()).size();
            if (!yes) {
                err.printf(
                        "Would erase %s and %d pieces of work. Say --yes to do it.%n", who, work);
                return Exit.DONE;
            }
            try (Rooms rooms = new Rooms(book, Clock.systemUTC())) {
                rooms.erase(pupil.id());
            }
            if (!book.rooms().naming(pupil.id()).isEmpty()) {
                err.printf(
                        "%s came into a room just now, so nothing was erased. Say it once more.%n",
                        who);
                return Exit.COULD_NOT_RUN;
            }
            book.pupils().erase(pupil.id());
            err.printf("Erased %s and %d pieces of work.%n", who, work);
            return Exit.DONE;
        }
    }

    private List<Pupil> found(ClassBook book) {
        List<String> groups =
                book.groups().all().stream()
                        .filter(one -> group.isEmpty() || group.get().equals(one.name()))
                        .map(Group::id)
                        .toList();
        List<Pupil> pupils =
                book.pupils().all().stream()
                        .filter(pupil -> groups.contains(pupil.groupId()))
                        .toList();
        List<Pupil> byId =
                pupils.stream()
                        .filter(pupil -> pupil.about().rosterId().equals(wanted.strip()))
                        .toList();
        return byId.isEmpty()
                ? pupils.stream().filter(pupil -> pupil.name().equals(wanted.strip())).toList()
                : byId;
    }

    private static String groups(ClassBook book, List<Pupil> pupils) {
        return pupils.stream()
                .flatMap(pupil -> book.groups().find(pupil.groupId()).stream())
                .map(Group::name)
                .collect(Collectors.joining(", "));
    }
}
