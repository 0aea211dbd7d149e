package tamabako.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import tamabako.paper.layout.Laid;
import tamabako.paper.layout.SheetLayout;
import tamabako.paper.pdf.Description;
import tamabako.paper.pdf.PrintFonts;
import tamabako.paper.pdf.TaggedPdf;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Sheet;

/// Prints sheets as PDF.
public final class SheetPrint {

    /// Marks that have no shape of their own, such as those that choose a form of a kanji; the
    /// print font has one form of each.
    private static final Pattern INVISIBLE =
            Pattern.compile("[\\p{Cf}\\x{FE00}-\\x{FE0F}\\x{E0100}-\\x{E01EF}]");

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

    /// Prints many sheets as one PDF: all the problems, then all the keys. It costs much less than
    /// a file for each.
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
        byte[] file = TaggedPdf.of(lay(clean, cleanWish), describe(clean, cleanWish, words));
        out.write(file);
    }

    private static List<Laid> lay(List<Sheet> sheets, PrintWish wish) {
        List<Laid> parts = new ArrayList<>();
        int page = 0;
        if (wish.part().hasSheet()) {
            for (Sheet sheet : sheets) {
                parts.add(SheetLayout.ofSheet(sheet, wish, PrintFonts.SHARED, page));
                page += parts.getLast().pages();
            }
        }
        if (wish.part().hasKey()) {
            for (Sheet sheet : sheets) {
                parts.add(SheetLayout.ofKey(sheet, wish, PrintFonts.SHARED, page));
                page += parts.getLast().pages();
            }
        }
        return parts;
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
        String title = clean(sheet.title());
        return new Sheet(
                clean(sheet.id()),
                title.isEmpty() ? words.say("untitled") : title,
                sheet.problems());
    }

    private static PrintWish clean(PrintWish wish) {
        return new PrintWish(
                wish.language(),
                wish.part(),
                wish.size(),
                wish.date().map(SheetPrint::clean),
                wish.name().map(SheetPrint::clean));
    }

    private static String clean(String text) {
        return INVISIBLE
                .matcher(Normalizer.normalize(text, Normalizer.Form.NFC))
                .replaceAll("")
                .replaceAll("[\\s\\p{Cntrl}]+", " ")
                .strip();
    }
}
