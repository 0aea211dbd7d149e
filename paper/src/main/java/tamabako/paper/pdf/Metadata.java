package tamabako.paper.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/// What PDF/UA-1 asks a file to say about itself: that it is tagged, its title, its language.
///
/// There is no date in it: the same sheet gives the same file on every day.
final class Metadata {

    private static final float VERSION = 1.7f;

    private Metadata() {}

    static void write(PDDocument document, Description description) throws IOException {
        document.setVersion(VERSION);
        document.setDocumentId(description.seed());
        document.getDocumentInformation().setTitle(description.title());
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage(description.language().toLanguageTag());
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        catalog.setMarkInfo(marked);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(xmp(description.title()).getBytes(StandardCharsets.UTF_8));
        catalog.setMetadata(metadata);
    }

    private static String xmp(String title) {
        return """
        <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
         xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
        <pdfuaid:part>1</pdfuaid:part>
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
                .formatted(escaped(title));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
