package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperForms;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;
import tamabako.problems.setting.SettersCustoms;
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
            "  tamabako paper abacus-one-sheet 3 --forms 2 --keep -o forms.pdf",
            "",
            "Exits with 0, with 1 if there are no such papers (the reason is told), or with 2."
        })
public final class PaperCommand implements Callable<Integer> {

    private static final int MOST_PAPERS = 100_000;
    private static final int MOST_FORMS = 100;

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
            names = "--no-customs",
            description =
                    "Keeps the table of the grade only, not what setters of papers keep to besides;"
                            + " docs/papers.md lists these customs.")
    private boolean noCustoms;

    @Mixin private PaperTargets targets = new PaperTargets();

    @Mixin private PaperPrintOptions print = new PaperPrintOptions();

    private final SecureRandom chance = new SecureRandom();

    @Override
    public Integer call() throws IOException {
        checkOptions();
        LadderSource source = LadderSource.of(spec, ladder);
        Grade asked = source.grade(spec, grade);
        List<Problem> leftOut = new ArrayList<>();
        int exit = Exit.DONE;
        if (without.isPresent()) {
            ProblemLines read = ProblemLines.read(spec, without.get());
            leftOut.addAll(read.problems());
            exit = read.exit();
        }
        long first = seed.orElseGet(chance::nextLong);
        err().println("seed " + first);
        ManyPapers many = new ManyPapers(forms, count, () -> PaperId.draw(chance::nextLong));
        return switch (many.make(
                () -> PaperForms.of(PaperMaker.of(source.ladder().id(), asked, customs())),
                first,
                leftOut,
                new Progress(err(), "papers"))) {
            case ManyPapers.Outcome.All(List<List<Paper>> sets) -> {
                targets.write(sets, source.yaml(), print.wish(source.ladder().name()));
                yield exit;
            }
            case ManyPapers.Outcome.NotMade(PaperMade.Reason reason) -> {
                err().println(ProblemWords.of(Locale.ENGLISH).say(reason));
                yield Exit.SOME_WRONG;
            }
        };
    }

    private SettersCustoms customs() {
        return noCustoms ? SettersCustoms.LEFT_OUT : SettersCustoms.KEPT;
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
        targets.check();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
