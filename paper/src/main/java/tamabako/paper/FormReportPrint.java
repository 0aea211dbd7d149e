package tamabako.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import tamabako.paper.layout.FormReportLayout;
import tamabako.paper.pdf.Description;
import tamabako.paper.pdf.PrintFonts;
import tamabako.paper.pdf.TaggedPdf;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.words.PrintWords;
import tamabako.problems.grade.Grade;
import tamabako.problems.setting.FormReport;

/// Prints as PDF what the forms of a paper ask of a pupil, side by side.
public final class FormReportPrint {

    private FormReportPrint() {}

    /// Prints the report. The parts of the wish do not matter.
    ///
    /// @param report of one form or more
    /// @param grade the grade that the forms are of
    /// @throws IOException if `out` fails
    public static void write(FormReport report, Grade grade, PaperPrintWish wish, OutputStream out)
            throws IOException {
        if (report.forms().isEmpty()) {
            throw new IllegalArgumentException("There is no form to report.");
        }
        PaperPrintWish clean = PaperPrint.clean(wish);
        CRC32 seed = new CRC32();
        seed.update((report.toString() + clean).getBytes(StandardCharsets.UTF_8));
        PrintWords words = PrintWords.of(clean.language());
        try (TaggedPdf pdf = new TaggedPdf()) {
            pdf.add(FormReportLayout.of(report, grade, clean, PrintFonts.SHARED));
            String title = FormReportLayout.title(grade, clean);
            out.write(pdf.finish(new Description(title, words.language(), seed.getValue())));
        }
    }
}
