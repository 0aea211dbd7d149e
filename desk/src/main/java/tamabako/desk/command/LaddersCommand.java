package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.desk.ladder.FormatWords;
import tamabako.desk.web.Languages;
import tamabako.desk.web.Words;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.file.LadderFile;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.grade.file.Mistake;

/// `ladders`: the ladders that there are, one of them in full, or a file checked.
@Command(
        name = "ladders",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Lists the ladders, shows one, or checks ladder files.",
        footer = {
            "",
            "Examples:",
            "  tamabako ladders",
            "  tamabako ladders first-steps",
            "  tamabako ladders --file first-steps > my-ladder.yaml",
            "  tamabako ladders --check my-ladder.yaml",
            "",
            "Exits with 0, with 1 if a file has mistakes (each is told with its line), or with 2."
        })
public final class LaddersCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..*",
            paramLabel = "LADDER",
            description = "The name of a shipped ladder, or a ladder file.")
    private List<String> names = List.of();

    @Option(names = "--check", description = "Only tells the mistakes of these files.")
    private boolean check;

    @Option(names = "--file", description = "Writes the ladder's file, to start one's own from.")
    private boolean file;

    @Option(names = "--lang", defaultValue = "en", description = "en or ja (default en).")
    private Locale language = Locale.ENGLISH;

    @Override
    public Integer call() throws IOException {
        if (names.isEmpty()) {
            Ladders.shipped().forEach(this::list);
            return Exit.DONE;
        }
        int exit = Exit.DONE;
        for (String name : names) {
            if (check) {
                exit = Math.max(exit, check(name));
            } else if (file) {
                out().print(LadderSource.of(spec, name).yaml());
            } else {
                show(LadderSource.of(spec, name).ladder());
            }
        }
        out().flush();
        return exit;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private void list(Ladder ladder) {
        out().printf("%-24s %s%n", ladder.id(), ladder.name().in(language));
    }

    private int check(String name) throws IOException {
        String yaml = new String(Source.bytes(name), StandardCharsets.UTF_8);
        return switch (LadderFile.read(name, yaml)) {
            case LadderFile.Read(Ladder ladder) -> {
                out().println(
                                "%s: the ladder %s, %d grades, is in order."
                                        .formatted(name, ladder.id(), ladder.grades().size()));
                yield Exit.DONE;
            }
            case LadderFile.Mistaken(List<Mistake> mistakes) -> {
                mistakes.forEach(one -> spec.commandLine().getErr().println(one.message(language)));
                yield Exit.SOME_WRONG;
            }
        };
    }

    private void show(Ladder ladder) {
        Languages languages = Languages.of(List.of("ladders"));
        Words words = languages.find(language.getLanguage()).orElseGet(languages::english);
        FormatWords formats = new FormatWords(words);
        out().printf("%s%n%s%n", ladder.name().in(language), ladder.about().in(language));
        for (Grade grade : ladder.grades()) {
            String unconfirmed =
                    grade.hasUnconfirmed() ? " (" + words.say("ladder.unconfirmed") + ")" : "";
            out().printf("%n%-12s %s%s%n", grade.id(), grade.name().in(language), unconfirmed);
            out().printf("%-12s %s  %s%n", "", formats.pass(grade), formats.time(grade.time()));
            for (Section section : grade.sections()) {
                out().printf(
                                "  %-18s %s  %s%n",
                                section.id(),
                                section.name().in(language),
                                formats.time(section.time()));
                for (Batch batch : section.batches()) {
                    out().printf("  %-18s   %s%n", "", formats.say(batch));
                }
            }
        }
    }
}
