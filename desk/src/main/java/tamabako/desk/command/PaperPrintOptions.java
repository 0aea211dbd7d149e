package tamabako.desk.command;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.wish.Size;
import tamabako.problems.grade.Label;

/// The options of `paper` that say how papers are printed.
final class PaperPrintOptions {

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

    /// @param ladder the name of the ladder
    PaperPrintWish wish(Label ladder) {
        return new PaperPrintWish(language, parts, size, page, title, Optional.of(ladder), date);
    }
}
