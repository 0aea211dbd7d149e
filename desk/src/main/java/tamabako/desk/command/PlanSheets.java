package tamabako.desk.command;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import tamabako.paper.SheetPrint;
import tamabako.paper.wish.Part;
import tamabako.paper.wish.PrintWish;
import tamabako.problems.Sheet;

/// Where plans are printed, if anywhere: a sheet for each pupil, then all the keys, in one PDF.
final class PlanSheets {

    @Option(
            names = "--sheets",
            paramLabel = "PDF",
            description = "Prints the plans as well: a sheet for each pupil, then the keys.")
    private Optional<String> file = Optional.empty();

    @Option(
            names = "--lang",
            defaultValue = "en",
            description = "The language of the sheets: en or ja (default en).")
    private Locale language = Locale.ENGLISH;

    /// Prints `sheets`, if a file was asked for and there are any.
    void print(List<Sheet> sheets) throws IOException {
        if (file.isPresent() && !sheets.isEmpty()) {
            PrintWish wish = PrintWish.ENGLISH.in(language).with(Part.BOTH);
            Target.write(file.get(), out -> SheetPrint.write(sheets, wish, out));
        }
    }
}
