package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tamabako.desk.opening.OpenDesk;
import tamabako.paper.PaperPrint;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.json.PaperJson;
import tamabako.records.ClassBook;
import tamabako.records.Identity;
import tamabako.records.KeptPapers;

/// The options of `paper` that say where papers go, one or more of them: into PDFs, to standard
/// output, into the class book.
final class PaperTargets {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "PDF",
            description = "All papers in one PDF; - for standard output.")
    private Optional<String> output = Optional.empty();

    @Option(
            names = "--folder",
            paramLabel = "FOLDER",
            description = "Each paper in a PDF of its own, named by its printed number.")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--json", description = "Writes each paper as a line of JSON.")
    private boolean json;

    @Option(
            names = "--keep",
            description =
                    "Puts the papers into the class book: by the printed number the page Make a"
                            + " paper finds them again.")
    private boolean keep;

    @Mixin private BookPlace place = new BookPlace();

    /// Refuses targets that do not go together, and a class book that is not there, before anything
    /// is made.
    ///
    /// @throws ParameterException if they do not
    void check() {
        if (output.isEmpty() && folder.isEmpty() && !json && !keep) {
            throw refuse("Say where the papers go: -o PDF, --folder FOLDER, --json or --keep.");
        }
        if (json && output.equals(Optional.of("-"))) {
            throw refuse("Standard output takes the PDF or the JSON lines, not both.");
        }
        if (keep) {
            place.folder()
                    .filter(folder -> !Files.exists(OpenDesk.bookIn(folder)))
                    .ifPresent(folder -> {
                        throw refuse(
                                "There is no class book in %s. Start the desk once, or name the folder of yours: --data FOLDER."
                                        .formatted(folder));
                    });
        }
    }

    /// Writes papers wherever they are to go.
    ///
    /// @param sets the forms that were made together, each set by itself
    /// @param yaml the file of their ladder
    void write(List<List<Paper>> sets, String yaml, PaperPrintWish wish) throws IOException {
        List<Paper> papers = sets.stream().flatMap(List::stream).toList();
        if (keep) {
            keep(sets, yaml);
        }
        Progress printed = new Progress(err(), "parts of papers");
        if (output.isPresent()) {
            Target.write(
                    output.get(),
                    out -> PaperPrint.write(papers, wish, out, (done, _) -> printed.at(done)));
        }
        if (folder.isPresent()) {
            PaperPrint.writeEach(papers, wish, folder.get(), (done, _) -> printed.at(done));
        }
        if (json) {
            papers.forEach(paper -> spec.commandLine().getOut().println(PaperJson.line(paper)));
        }
        spec.commandLine().getOut().flush();
    }

    private void keep(List<List<Paper>> sets, String yaml) {
        try (ClassBook book = place.openExisting()) {
            for (List<Paper> forms : sets) {
                book.papers().keep(new KeptPapers(Identity.readable(), yaml, Instant.now(), forms));
            }
        }
        err().println("kept in " + place.database());
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
