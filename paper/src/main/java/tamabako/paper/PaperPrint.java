package tamabako.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import tamabako.paper.layout.Laid;
import tamabako.paper.layout.PaperLayout;
import tamabako.paper.pdf.Description;
import tamabako.paper.pdf.PrintFonts;
import tamabako.paper.pdf.TaggedPdf;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.words.PrintWords;
import tamabako.problems.setting.Paper;

/// Prints papers as PDF: the problems for the pupil, and for the teacher slip pads to cut and bind,
/// what the caller reads, the key and a marking sheet.
public final class PaperPrint {

    private PaperPrint() {}

    /// Prints papers as one PDF: of all papers first the problems, then the pads, and so on in the
    /// order of [PaperPart]. It costs much less than a file for each.
    ///
    /// The same papers and wish give the same bytes. Nothing is written unless all of it can be
    /// printed.
    ///
    /// @throws tamabako.paper.wish.Unprintable if one of the papers cannot be printed as wished;
    ///   its message says what, where and how to mend it
    /// @throws IllegalArgumentException if there is no paper, or none has any of the parts
    /// @throws IOException if `out` fails
    public static void write(List<Paper> papers, PaperPrintWish wish, OutputStream out)
            throws IOException {
        write(papers, wish, out, Progress.UNHEARD);
    }

    /// The same, telling how far the print has come; a paper is done once for each part.
    ///
    /// @throws tamabako.paper.wish.Unprintable as [#write(List, PaperPrintWish, OutputStream)]
    /// @throws IOException if `out` fails
    public static void write(
            List<Paper> papers, PaperPrintWish wish, OutputStream out, Progress progress)
            throws IOException {
        if (papers.isEmpty()) {
            throw new IllegalArgumentException("There is no paper to print.");
        }
        PaperPrintWish clean = clean(wish);
        try (TaggedPdf pdf = new TaggedPdf()) {
            int done = 0;
            for (PaperPart part : clean.parts()) {
                for (Paper paper : papers) {
                    add(pdf, paper, part, clean);
                    progress.done(++done, papers.size() * clean.parts().size());
                }
            }
            if (pdf.pages() == 0) {
                throw new IllegalArgumentException("No paper has any of " + clean.parts() + ".");
            }
            out.write(pdf.finish(describe(papers, clean)));
        }
    }

    /// Prints each paper as a file of its own in `folder`, named by the id of the paper, such as
    /// `7KMX-2P9T-HC4R.pdf`. Files of that name are replaced.
    ///
    /// @throws tamabako.paper.wish.Unprintable if one of the papers cannot be printed as wished;
    ///   those before it have been written
    /// @throws IllegalArgumentException if an id cannot name a file, or two papers share it
    /// @throws IOException if a file cannot be written
    public static void writeEach(
            List<Paper> papers, PaperPrintWish wish, Path folder, Progress progress)
            throws IOException {
        long names = papers.stream().map(Paper::id).distinct().count();
        boolean plain = papers.stream().allMatch(paper -> paper.id().matches("[A-Za-z0-9-]+"));
        if (names < papers.size() || !plain) {
            throw new IllegalArgumentException("The ids of these papers are no names of files.");
        }
        Files.createDirectories(folder);
        int done = 0;
        for (Paper paper : papers) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            write(List.of(paper), wish, bytes);
            Files.write(folder.resolve(paper.id() + ".pdf"), bytes.toByteArray());
            progress.done(++done, papers.size());
        }
    }

    private static void add(TaggedPdf pdf, Paper paper, PaperPart part, PaperPrintWish wish) {
        List<Laid> laid = PaperLayout.of(paper, part, wish, PrintFonts.SHARED, pdf.pages());
        laid.forEach(pdf::add);
    }

    private static Description describe(List<Paper> papers, PaperPrintWish wish) {
        PrintWords words = PrintWords.of(wish.language());
        CRC32 seed = new CRC32();
        seed.update((papers.toString() + wish).getBytes(StandardCharsets.UTF_8));
        return new Description(
                PaperLayout.title(papers.getFirst(), wish), words.language(), seed.getValue());
    }

    /// The wish with what people wrote made ready for print.
    static PaperPrintWish clean(PaperPrintWish wish) {
        Optional<String> title = wish.title().map(PlainText::of).filter(text -> !text.isEmpty());
        return new PaperPrintWish(
                wish.language(),
                wish.parts(),
                wish.size(),
                wish.page(),
                title,
                wish.ladder(),
                wish.date().map(PlainText::of));
    }
}
