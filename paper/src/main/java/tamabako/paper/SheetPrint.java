package tamabako.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;
import tamabako.paper.layout.SheetLayout;
import tamabako.paper.pdf.Description;
import tamabako.paper.pdf.PrintFonts;
import tamabako.paper.pdf.TaggedPdf;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Sheet;

/// Prints sheets as PDF.
public final class SheetPrint {

    private SheetPrint() {}

    /// Prints one sheet, its key or both, as one PDF.
    ///
    /// The same sheet and wish give the same bytes. Nothing is written unless all of it can be
    /// printed.
    ///
    /// @throws tamabako.paper.wish.Unprintable if the sheet cannot be printed as wished; its
    ///   message says what, where and how to mend it
    /// @throws IOException if `out` fails
    public static void write(Sheet sheet, PrintWish wish, OutputStream out) throws IOException {
        write(List.of(sheet), wish, out);
    }

    /// Prints many sheets as one PDF: all the problems, then the keys, as many on a page as fit. It
    /// costs much less than a file for each.
    ///
    /// @throws tamabako.paper.wish.Unprintable if one of the sheets cannot be printed as wished
    /// @throws IOException if `out` fails
    public static void write(List<Sheet> sheets, PrintWish wish, OutputStream out)
            throws IOException {
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("There is no sheet to print.");
        }
        PrintWords words = PrintWords.of(wish.language());
        List<Sheet> clean = sheets.stream().map(sheet -> clean(sheet, words)).toList();
        PrintWish cleanWish = clean(wish);
        try (TaggedPdf pdf = new TaggedPdf()) {
            if (wish.part().hasSheet()) {
                for (Sheet sheet : clean) {
                    pdf.add(SheetLayout.ofSheet(sheet, cleanWish, PrintFonts.SHARED, pdf.pages()));
                }
                for (Sheet sheet : clean) {
                    SheetLayout.ofPads(sheet, cleanWish, PrintFonts.SHARED, pdf.pages())
                            .forEach(pdf::add);
                }
            }
            if (wish.part().hasKey()) {
                pdf.add(SheetLayout.ofKeys(clean, cleanWish, PrintFonts.SHARED, pdf.pages()));
            }
            out.write(pdf.finish(describe(clean, cleanWish, words)));
        }
    }

    private static Description describe(List<Sheet> sheets, PrintWish wish, PrintWords words) {
        String title = sheets.getFirst().title();
        String shown = wish.part().hasSheet() ? title : title + " - " + words.say("key");
        CRC32 seed = new CRC32();
        seed.update((sheets.toString() + wish).getBytes(StandardCharsets.UTF_8));
        return new Description(shown, words.language(), seed.getValue());
    }

    /// Blanks of every kind become one blank, and letters with marks one character; a sheet without
    /// a title is called practice.
    private static Sheet clean(Sheet sheet, PrintWords words) {
        String title = PlainText.of(sheet.title());
        return new Sheet(
                PlainText.of(sheet.id()),
                title.isEmpty() ? words.say("untitled") : title,
                sheet.problems());
    }

    private static PrintWish clean(PrintWish wish) {
        return new PrintWish(
                wish.language(),
                wish.part(),
                wish.size(),
                wish.date().map(PlainText::of),
                wish.name().map(PlainText::of));
    }
}
