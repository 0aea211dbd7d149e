package tamabako.desk.command;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tamabako.desk.ladder.SectionProblems;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;
import tamabako.problems.setting.PaperMade;

/// The options of `make` that ask for a section of a grade.
final class SectionOptions {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--ladder",
            paramLabel = "LADDER",
            description = "Makes a section of a grade: a shipped ladder, or its file.")
    private Optional<String> ladder = Optional.empty();

    @Option(names = "--grade", defaultValue = "", description = "The grade (with --ladder).")
    private String grade = "";

    @Option(
            names = "--section",
            defaultValue = "",
            description = "The section (with --ladder); else the first.")
    private String section = "";

    /// Whether a section is asked for.
    boolean isAsked() {
        return ladder.isPresent();
    }

    /// Its problems, from that seed.
    ///
    /// @throws ParameterException if there is no such ladder, grade or section
    PaperMade make(long seed) throws IOException {
        LadderSource source = LadderSource.of(spec, ladder.orElse(""));
        Grade asked = source.grade(spec, grade);
        List<String> known = asked.sections().stream().map(Section::id).toList();
        String wanted = section.isEmpty() ? known.getFirst() : section;
        Section found = asked.section(wanted).orElseThrow(() -> unknown(asked, wanted, known));
        return SectionProblems.make(source.ladder().id(), asked, found, seed, List.of());
    }

    private ParameterException unknown(Grade asked, String wanted, List<String> known) {
        return new ParameterException(
                spec.commandLine(),
                "The grade %s has no section \"%s\". Its sections are: %s."
                        .formatted(asked.id(), wanted, String.join(", ", known)));
    }
}
