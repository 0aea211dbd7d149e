package tamabako.paper;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/// Reads a file along its structure tree, as a screen reader does: one line for each element that
/// is more than a frame around others.
final class StructureReader {

    private final Map<COSDictionary, Map<Integer, String>> texts = new HashMap<>();
    private final List<String> lines = new ArrayList<>();

    private StructureReader() {}

    static List<String> read(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            StructureReader reader = new StructureReader();
            for (PDPage page : document.getPages()) {
                reader.texts.put(page.getCOSObject(), textsOf(page));
            }
            reader.walk(document.getDocumentCatalog().getStructureTreeRoot());
            return reader.lines;
        }
    }

    private static Map<Integer, String> textsOf(PDPage page) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        Map<Integer, String> texts = new HashMap<>();
        for (PDMarkedContent content : extractor.getMarkedContents()) {
            if (content.getMCID() >= 0) {
                texts.put(content.getMCID(), text(content));
            }
        }
        return texts;
    }

    private static String text(PDMarkedContent content) {
        if (content.getActualText() != null) {
            return content.getActualText();
        }
        StringBuilder text = new StringBuilder();
        TextPosition before = null;
        for (Object part : content.getContents()) {
            if (part instanceof PDMarkedContent inner) {
                text.append(text(inner));
            } else if (part instanceof TextPosition position) {
                if (before != null && isWordApart(before, position)) {
                    text.append(' ');
                }
                text.append(position.getUnicode());
                before = position;
            }
        }
        return text.toString().strip();
    }

    private static boolean isWordApart(TextPosition before, TextPosition position) {
        double end = before.getXDirAdj() + before.getWidthDirAdj();
        return position.getXDirAdj() > end + 3 * position.getFontSizeInPt()
                && !before.getUnicode().equals(" ");
    }

    private void walk(PDStructureNode node) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                line(element);
                walk(element);
            }
        }
    }

    private void line(PDStructureElement element) {
        String type = element.getStructureType();
        if (List.of("Document", "Sect", "TR").contains(type)) {
            return;
        }
        COSDictionary attributes = element.getCOSObject().getCOSDictionary(COSName.A);
        String scope =
                attributes == null ? "" : attributes.getNameAsString(COSName.getPDFName("Scope"));
        String text =
                element.getKids().stream()
                        .filter(Integer.class::isInstance)
                        .map(content ->
                                requireNonNull(texts.get(element.getPage().getCOSObject()))
                                        .get(content))
                        .findFirst()
                        .orElse("");
        lines.add((type + " " + scope + " " + text).replaceAll(" +", " ").strip());
    }
}
