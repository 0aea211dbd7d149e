package tamabako.paper.pdf;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import tamabako.paper.layout.Face;

/// The fonts of one document, each embedded as the subset of the characters it prints.
final class DocumentFonts {

    private final ObjectFile file;
    private final Map<FontFile, Used> used = new LinkedHashMap<>();

    DocumentFonts(ObjectFile file) {
        this.file = file;
    }

    /// A font in use.
    ///
    /// @param name what pages call it
    record Used(String name, int number, FontFile file, TreeSet<Integer> characters) {

        /// Adds `character` to what is printed, and tells its number in the font.
        int glyph(int character) {
            characters.add(character);
            return file.glyph(character);
        }
    }

    Used fontFor(Face face, String text) {
        FontFile font = PrintFonts.SHARED.fontFor(face, text);
        Used known = used.get(font);
        if (known == null) {
            known = new Used("F" + used.size(), file.reserve(), font, new TreeSet<>());
            used.put(font, known);
        }
        return known;
    }

    /// Writes the dictionary of all fonts, by the names that pages call them.
    void write(int number) throws IOException {
        Bytes names = new Bytes().add("<</Font<<");
        for (Used font : used.values()) {
            names.add('/').add(font.name()).add(' ').reference(font.number());
        }
        file.write(number, names.add(">>>>"));
        try (PDDocument workshop = new PDDocument()) {
            for (Used font : used.values()) {
                PDType0Font subset = PDType0Font.load(workshop, font.file().font(), true);
                font.characters().forEach(subset::addToSubset);
                subset.subset();
                new CopiedObjects(file).copy(subset.getCOSObject(), font.number());
            }
        }
    }
}
