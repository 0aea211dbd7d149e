package tamabako.paper.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import tamabako.paper.layout.Face;

/// The fonts of one document, each embedded as the subset of the characters it prints.
final class DocumentFonts {

    private final PDDocument document;
    private final Map<FontFile, PDFont> embedded = new HashMap<>();

    DocumentFonts(PDDocument document) {
        this.document = document;
    }

    PDFont fontFor(Face face, String text) {
        return embedded.computeIfAbsent(PrintFonts.SHARED.fontFor(face, text), this::embed);
    }

    private PDFont embed(FontFile font) {
        try {
            return PDType0Font.load(document, font.font(), true);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot embed the print font.", failed);
        }
    }
}
