package tamabako.desk.command;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tamabako.records.ClassBook;
import tamabako.records.roster.RosterOut;

/// `classbook export`: lists from the class book.
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes a list for spreadsheets: the pupils, or the results of exams and contests.",
            "A cell that would be taken for a formula gets an apostrophe in front."
        },
        footer = {
            "",
            "Examples:",
            "  tamabako classbook export pupils -o pupils.xlsx",
            "  tamabako classbook export results --lang ja > results.csv",
            "",
            "Exits with 0, or with 2."
        })
final class ClassbookExport implements Callable<Integer> {

    /// What can be listed.
    enum What {
        pupils,
        results
    }

    @Parameters(
            index = "0",
            arity = "0..1",
            defaultValue = "pupils",
            paramLabel = "WHAT",
            description = "pupils or results (default pupils).")
    private What what = What.pupils;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            defaultValue = "-",
            description = "A name that ends in .csv or .xlsx; - for standard output (CSV).")
    private String output = "-";

    @Option(names = "--form", description = "csv or xlsx, where the name does not say it.")
    private Optional<RosterOut.Form> form = Optional.empty();

    @Option(
            names = "--lang",
            defaultValue = "en",
            description = "Headings in en or ja (default en).")
    private Locale language = Locale.ENGLISH;

    @Mixin private BookPlace place = new BookPlace();

    @Override
    public Integer call() throws IOException {
        boolean isWorkbook = output.toLowerCase(Locale.ROOT).endsWith(".xlsx");
        RosterOut.Form wanted = form.orElse(isWorkbook ? RosterOut.Form.XLSX : RosterOut.Form.CSV);
        byte[] bytes;
        try (ClassBook book = place.openExisting()) {
            bytes =
                    switch (what) {
                        case pupils -> RosterOut.pupils(book, wanted, language);
                        case results -> RosterOut.results(book, wanted, language);
                    };
        }
        Target.write(output, out -> out.write(bytes));
        return Exit.DONE;
    }
}
