package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Year;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.desk.opening.PrivateFolder;
import tamabako.records.ClassBook;
import tamabako.records.roster.Importing;
import tamabako.records.roster.Plan;
import tamabako.records.roster.PlanText;
import tamabako.records.roster.Read;
import tamabako.records.roster.RosterFile;
import tamabako.records.roster.RosterWords;
import tamabako.records.roster.Told;
import tamabako.records.roster.Wishes;

/// `classbook import`: a roster into the class book.
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Reads a roster: CSV, XLSX, or OneRoster 1.2 CSV (a zip or a folder).",
            "Without --write it only shows what would happen. Nothing is ever removed."
        },
        footer = {
            "",
            "Examples:",
            "  tamabako classbook import tuesday.csv",
            "  tamabako classbook import tuesday.csv --write",
            "  tamabako classbook import names.xlsx --group Beginners --language ja --write",
            "",
            "Exits with 0, with 1 if lines were left out (each is told), or with 2."
        })
final class ClassbookImport implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            index = "0",
            paramLabel = "ROSTER",
            description = "The file, or the folder of a OneRoster package; - for standard input.")
    private String roster = "-";

    @Option(names = "--write", description = "Writes it into the class book.")
    private boolean write;

    @Option(
            names = "--group",
            paramLabel = "NAME",
            defaultValue = "",
            description = "The group of those for whom the roster names none.")
    private String group = "";

    @Option(
            names = "--language",
            defaultValue = "en",
            description =
                    "The language of new pupils for whom the roster names none (default"
                            + " ${DEFAULT-VALUE}).")
    private Locale language = Locale.ENGLISH;

    @Option(
            names = "--lang",
            defaultValue = "en",
            description = "Tells it in en or ja (default en).")
    private Locale telling = Locale.ENGLISH;

    @Mixin private BookPlace place = new BookPlace();

    @Override
    public Integer call() throws IOException {
        RosterWords words = RosterWords.of(telling);
        return switch (read()) {
            case Read.Unreadable(Told why) -> {
                spec.commandLine().getErr().println(words.say(why));
                yield Exit.SOME_WRONG;
            }
            case Read.Roster read -> take(read, words);
        };
    }

    private Integer take(Read.Roster read, RosterWords words) {
        Plan plan = plan(read, new Wishes(group, language, Year.now()));
        PlanText text = new PlanText(words);
        PrintWriter out = spec.commandLine().getOut();
        text.steps(plan).forEach(out::println);
        text.notices(plan).forEach(out::println);
        out.println(text.summary(plan, write));
        out.flush();
        plan.wrong().forEach(told -> spec.commandLine().getErr().println(words.say(told)));
        return plan.wrong().isEmpty() ? Exit.DONE : Exit.SOME_WRONG;
    }

    /// The plan, and its writing where that is asked. Looking makes no class book.
    private Plan plan(Read.Roster read, Wishes wishes) {
        if (!write && !place.isThere()) {
            return Importing.planForNewBook(read, wishes);
        }
        place.folder().ifPresent(PrivateFolder::make);
        try (ClassBook book = ClassBook.open(place.database())) {
            return write ? Importing.write(book, read, wishes) : Importing.plan(book, read, wishes);
        }
    }

    private Read read() throws IOException {
        if (roster.equals("-") || !Files.isDirectory(Path.of(roster))) {
            return RosterFile.read(Source.bytes(roster));
        }
        Map<String, byte[]> files = new HashMap<>();
        try (Stream<Path> listed = Files.list(Path.of(roster))) {
            List<Path> plain = listed.filter(Files::isRegularFile).toList();
            for (Path file : plain) {
                String name = file.toString().replaceFirst("^.*[/\\\\]", "");
                if (name.endsWith(".csv")) {
                    files.put(name, Source.bytes(file.toString()));
                }
            }
        }
        return RosterFile.oneRoster(files);
    }
}
