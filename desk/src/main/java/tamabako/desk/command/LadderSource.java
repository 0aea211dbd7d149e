package tamabako.desk.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.LadderFile;
import tamabako.problems.grade.file.LadderTexts;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.grade.file.Mistake;

/// A ladder as a command names it: one that is shipped, or a file.
///
/// @param yaml the text of its file
record LadderSource(Ladder ladder, String yaml) {

    /// The shipped ladder of that name, or the one in the file of that name.
    ///
    /// @throws ParameterException if there is neither, or the file has mistakes, which are told
    static LadderSource of(CommandSpec command, String name) throws IOException {
        Optional<Ladder> shipped = Ladders.ladder(name);
        if (shipped.isPresent()) {
            return new LadderSource(shipped.get(), LadderTexts.text(name));
        }
        if (!Files.isRegularFile(Path.of(name))) {
            throw new ParameterException(
                    command.commandLine(),
                    "There is no ladder \"%s\", and no file of that name. The ladders are: %s."
                            .formatted(name, String.join(", ", LadderTexts.names())));
        }
        String yaml = new String(Source.bytes(name), StandardCharsets.UTF_8);
        return switch (LadderFile.read(name, yaml)) {
            case LadderFile.Read(Ladder ladder) -> new LadderSource(ladder, yaml);
            case LadderFile.Mistaken(List<Mistake> mistakes) ->
                    throw new ParameterException(
                            command.commandLine(),
                            mistakes.stream()
                                    .map(mistake -> mistake.message(Locale.ENGLISH))
                                    .collect(Collectors.joining("\n")));
        };
    }

    /// The grade of that name.
    ///
    /// @throws ParameterException if the ladder does not have it
    Grade grade(CommandSpec command, String name) {
        return ladder.grade(name)
                .orElseThrow(() ->
                        new ParameterException(
                                command.commandLine(),
                                "The ladder %s has no grade \"%s\". Its grades are: %s."
                                        .formatted(
                                                ladder.id(),
                                                name,
                                                ladder.grades().stream()
                                                        .map(Grade::id)
                                                        .collect(Collectors.joining(", ")))));
    }
}
