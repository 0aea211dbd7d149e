package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.paper.PaperPrint;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.wish.Size;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.setting.FormsMade;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperForms;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;
import tamabako.problems.setting.json.PaperJson;
import tamabako.problems.words.ProblemWords;

/// `paper`: whole papers of a grade.
@Command(
        name = "paper",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Makes whole papers of a grade, with keys and marking sheets.",
        footer = {
            "",
            "`tamabako ladders` lists the ladders, and `tamabako ladders LADDER` their grades.",
            "",
            "Examples:",
            "  tamabako paper first-steps step-3 -o step-3.pdf",
            "  tamabako paper abacus-one-sheet 3 --forms 4 --page b4 -o forms.pdf",
            "  tamabako paper abacus-one-sheet 3 --count 1000 --folder papers --json > papers.jsonl",
            "",
            "Exits with 0, with 1 if there are no such papers (the reason is told), or with 2."
        })
public final class PaperCommand implements Callable<Integer> {

    private static final int MOST_PAPERS = 100_000;
    private static final int MOST_FORMS = 100;

    /// Sets of forms that are made before progress is told.
    private static final int BATCH = 32;

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "LADDER", description = "A shipped ladder, or its file.")
    private String ladder = "";

    @Parameters(index = "1", paramLabel = "GRADE", description = "A grade of it.")
    private String grade = "";

    @Option(
            names = "--forms",
            defaultValue = "1",
            description = "Forms that ask for the same work, without a sum in two (default 1).")
    private int forms;

    @Option(
            names = "--count",
            defaultValue = "1",
            description = "How often: so many papers, or sets of forms (default 1).")
    private int count;

    @Option(
            names = "--seed",
            description =
                    "The same seed makes the same problems; a fresh one if not given. The printed"
                            + " numbers are always fresh.")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--without",
            paramLabel = "FILE",
            description = "Problems that are not to be asked again, in any format.")
    private Optional<String> without = Optional.empty();

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
            names = "--part",
            split = ",",
            description = "What to print: ${COMPLETION-CANDIDATES} (default all of them).")
    private Set<PaperPart> parts = EnumSet.allOf(PaperPart.class);

    @Option(
            names = "--size",
            defaultValue = "normal",
            description = "normal or large (default normal).")
    private Size size = Size.NORMAL;

    @Option(
            names = "--page",
            defaultValue = "a4",
            description = "a4, b4 (JIS) or letter (default a4).")
    private PageSize page = PageSize.A4;

    @Option(names = "--title", description = "What stands above the grade; else the ladder's name.")
    private Optional<String> title = Optional.empty();

    @Option(names = "--date", description = "The date as it is to be printed; else a line for it.")
    private Optional<String> date = Optional.empty();

    @Option(names = "--lang", defaultValue = "en", description = "en or ja (default en).")
    private Locale language = Locale.ENGLISH;

    private final SecureRandom chance = new SecureRandom();

    @Override
    public Integer call() throws IOException {
        checkOptions();
        LadderSource source = LadderSource.of(spec, ladder);
        Grade asked = source.grade(spec, grade);
        // A maker is for one thread at a time.
        ThreadLocal<PaperForms> maker =
                ThreadLocal.withInitial(
                        () -> PaperForms.of(PaperMaker.of(source.ladder().id(), asked)));
        List<Problem> leftOut = new ArrayList<>();
        int exit = Exit.DONE;
        if (without.isPresent()) {
            ProblemLines read = ProblemLines.read(spec, without.get());
            leftOut.addAll(read.problems());
            exit = read.exit();
        }
        long first = seed.orElseGet(chance::nextLong);
        err().println("seed " + first);
        List<Paper> papers = new ArrayList<>();
        Optional<PaperMade.Reason> reason = make(maker, first, leftOut, papers);
        if (reason.isPresent()) {
            err().println(ProblemWords.of(Locale.ENGLISH).say(reason.get()));
            return Exit.SOME_WRONG;
        }
        write(papers);
        return exit;
    }

    private void checkOptions() {
        if (forms < 1 || forms > MOST_FORMS) {
            throw refuse("There can be 1 to %d forms, not %d.".formatted(MOST_FORMS, forms));
        }
        if (count < 1 || (long) count * forms > MOST_PAPERS) {
            throw refuse(
                    "There can be 1 to %,d papers in one call, forms counted; ask again for more."
                            .formatted(MOST_PAPERS));
        }
        if (output.isEmpty() && folder.isEmpty() && !json) {
            throw refuse("Say where the papers go: -o PDF, --folder FOLDER or --json.");
        }
        if (json && output.equals(Optional.of("-"))) {
            throw refuse("Standard output takes the PDF or the JSON lines, not both.");
        }
    }

    /// Makes all papers, on all cores and in the order of their seeds.
    private Optional<PaperMade.Reason> make(
            ThreadLocal<PaperForms> maker, long first, List<Problem> leftOut, List<Paper> papers) {
        Progress progress = new Progress(err(), "papers");
        for (int done = 0; done < count; done += BATCH) {
            List<FormsMade> made =
                    IntStream.range(done, Math.min(count, done + BATCH))
                            .parallel()
                            .mapToObj(i -> maker.get().make(ids(), first + i, leftOut))
                            .toList();
            for (FormsMade one : made) {
                switch (one) {
                    case FormsMade.Found found -> papers.addAll(found.papers());
                    case FormsMade.NotMade(PaperMade.Reason reason) -> {
                        return Optional.of(reason);
                    }
                }
            }
            progress.at(papers.size());
        }
        progress.done(papers.size());
        return Optional.empty();
    }

    private List<PaperId> ids() {
        return Stream.generate(() -> PaperId.draw(chance::nextLong)).limit(forms).toList();
    }

    private void write(List<Paper> papers) throws IOException {
        PaperPrintWish wish = new PaperPrintWish(language, parts, size, page, title, date);
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

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
