package tamabako.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.wish.PrintWish;
import tamabako.problems.Sheet;
import tamabako.problems.setting.Paper;

/// Pages of a written file, read back with PDFBox's own text reader.
record Pages(List<List<Line>> pages) {

    /// A line of text and where its characters stand.
    record Line(String text, List<TextPosition> positions) {}

    static byte[] print(Sheet sheet, PrintWish wish) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            SheetPrint.write(sheet, wish, out);
            return out.toByteArray();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static byte[] print(Paper paper, PaperPrintWish wish) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            PaperPrint.write(List.of(paper), wish, out);
            return out.toByteArray();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static Pages of(Sheet sheet, PrintWish wish) {
        return read(print(sheet, wish));
    }

    /// The lines of each page, in the order in which they were written.
    static Pages read(byte[] file) {
        try (PDDocument document = Loader.loadPDF(file)) {
            List<List<Line>> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                LineReader reader = new LineReader();
                reader.setStartPage(page);
                reader.setEndPage(page);
                reader.getText(document);
                pages.add(reader.lines());
            }
            return new Pages(pages);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /// The words of all lines.
    List<List<String>> text() {
        return pages.stream().map(page -> page.stream().map(Line::text).toList()).toList();
    }

    private static final class LineReader extends PDFTextStripper {

        private final List<Line> lines = new ArrayList<>();
        private final StringBuilder text = new StringBuilder();
        private final List<TextPosition> positions = new ArrayList<>();

        @Override
        protected void writeString(String words, List<TextPosition> where) {
            text.append(words);
            positions.addAll(where);
        }

        @Override
        protected void writeWordSeparator() {
            text.append(' ');
        }

        @Override
        protected void writeLineSeparator() {
            if (!positions.isEmpty()) {
                lines.add(new Line(text.toString().strip(), List.copyOf(positions)));
            }
            text.setLength(0);
            positions.clear();
        }

        List<Line> lines() {
            writeLineSeparator();
            return lines;
        }
    }
}
