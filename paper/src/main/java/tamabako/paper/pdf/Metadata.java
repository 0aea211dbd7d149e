package tamabako.paper.pdf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;

/// What PDF/UA-1 asks a file to say about itself: that it is tagged, its title, its language.
///
/// There is no date in it: the same sheet gives the same file on every day.
final class Metadata {

    private static final int IDENTIFIER = 16;

    private Metadata() {}

    /// Writes it, and tells the entries of the trailer.
    static String write(ObjectFile file, int pages, int tree, Description description) {
        byte[] xmp = xmp(description.title()).getBytes(StandardCharsets.UTF_8);
        int metadata = file.reserve();
        file.writeStream(metadata, "/Type/Metadata/Subtype/XML", new Bytes().add(xmp, xmp.length));
        int information = file.reserve();
        file.write(information, new Bytes().add("<</Title").text(description.title()).add(">>"));
        int catalog = file.reserve();
        Bytes object = new Bytes().add("<</Type/Catalog/Pages ").reference(pages);
        object.add("/StructTreeRoot ").reference(tree);
        object.add("/Lang(").add(description.language().toLanguageTag()).add(')');
        object.add("/MarkInfo<</Marked true>>/ViewerPreferences<</DisplayDocTitle true>>");
        file.write(catalog, object.add("/Metadata ").reference(metadata).add(">>"));
        String id = identifier(description);
        return "/Root %d 0 R/Info %d 0 R/ID[<%s><%s>]".formatted(catalog, information, id, id);
    }

    private static String identifier(Description description) {
        String named = description.seed() + description.title();
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(named.getBytes(StandardCharsets.UTF_8));
            Bytes hex = new Bytes();
            for (byte each : Arrays.copyOf(digest, IDENTIFIER)) {
                hex.hex(each);
            }
            return new String(hex.copy(), StandardCharsets.US_ASCII);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("Every Java has SHA-256.", missing);
        }
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
