package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.voice.number.Wording;
import tamabako.voice.script.CallScript;
import tamabako.voice.script.CallWish;
import tamabako.voice.script.CallWords;
import tamabako.voice.script.Called;
import tamabako.voice.script.Caller;
import tamabako.voice.script.Unsayable;
import tamabako.voice.sound.Pace;
import tamabako.voice.words.VoiceWords;

/// `call`: columns as a caller reads them.
@Command(
        name = "call",
        mixinStandardHelpOptions = true,
        description =
                "Prints what a caller says for each column, in figures and words, and speaks it.",
        footer = {
            "",
            "Examples:",
            "  tamabako make --rows 10 --digits 3 --count 5 | tamabako call",
            "  echo 19+80+761-456-94 | tamabako call --lang ja",
            "  tamabako call sums.jsonl --lang ja --pace 3s --sound call.wav",
            "",
            "Exits with 0, with 1 if a line could not be read or called (it is named, the rest is"
                    + " done), or with 2."
        })
public final class CallCommand implements Callable<Integer> {

    /// What is written.
    enum As {
        text,
        json
    }

    @Spec private CommandSpec spec = CommandSpec.create();

    @Mixin private ProblemsFile problems = new ProblemsFile();

    @Option(
            names = "--lang",
            defaultValue = "en-US",
            description = "en-US, en-GB or ja (default ${DEFAULT-VALUE}).")
    private Locale language = Locale.US;

    @Option(
            names = "--wording",
            defaultValue = "full",
            description =
                    "How numbers are said: full, groups (of three, English only) or figures"
                            + " (default ${DEFAULT-VALUE}).")
    private Wording wording = Wording.FULL;

    @Option(
            names = "--unit",
            paramLabel = "CODE",
            description =
                    "JPY, USD, EUR or none; the problem's own if not given, else yen in Japanese"
                            + " and none in English.")
    private Optional<String> unit = Optional.empty();

    @Option(names = "--clearing", description = "The opening calls for the frame to be cleared.")
    private boolean clearing;

    @Option(
            names = "--as",
            defaultValue = "text",
            description = "text or json (default ${DEFAULT-VALUE}).")
    private As as = As.text;

    @Option(
            names = "--sound",
            paramLabel = "WAV",
            description =
                    "Writes the sound here, and the times of the rows beside it as JSON; of several"
                            + " calls each gets its name: call-1.wav, call-2.wav.")
    private Optional<Path> sound = Optional.empty();

    @Option(
            names = "--pace",
            defaultValue = "+1",
            description =
                    "3s: 3 seconds a row; 4d: 4 digits a second; +1: as long as it takes, then 1 s"
                            + " (default ${DEFAULT-VALUE}).")
    private String pace = "+1";

    @Override
    public Integer call() throws IOException {
        Optional<CallWords> words = CallWords.find(language);
        if (words.isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println(
                            "Nobody calls in the language %s. Choose en-US, en-GB or ja."
                                    .formatted(language.toLanguageTag()));
            return Exit.COULD_NOT_RUN;
        }
        Optional<Pace> asked = Pace.parse(pace);
        if (asked.isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println(
                            "The pace \"%s\" cannot be read. Write 3s, 4d or +1, for example."
                                    .formatted(pace));
            return Exit.COULD_NOT_RUN;
        }
        ProblemLines read = problems.read();
        CallFile files = new CallFile(spec, sound, asked.get(), read.problems().size());
        int exit = read.exit();
        for (Problem problem : read.problems()) {
            if (!write(problem, words.get(), files)) {
                exit = Exit.SOME_WRONG;
            }
        }
        spec.commandLine().getOut().flush();
        return exit;
    }

    private boolean write(Problem problem, CallWords words, CallFile files) throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        if (!(problem instanceof Column column)) {
            err.println(
                    "problem %s: a %s cannot be called. Only columns are."
                            .formatted(problem.id(), problem.kind()));
            return false;
        }
        CallWish wish = new CallWish(wording, unit, clearing);
        return switch (Caller.call(column, words, wish)) {
            case Called.Written(CallScript script) -> {
                spec.commandLine()
                        .getOut()
                        .print(as == As.json ? CallFormat.json(script) : CallFormat.text(script));
                yield files.write(script);
            }
            case Called.Refused(Unsayable reason) -> {
                err.println(
                        "problem %s: %s"
                                .formatted(
                                        problem.id(), VoiceWords.of(Locale.ENGLISH).say(reason)));
                yield false;
            }
        };
    }
}
