package tamabako.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfparser.PDFParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/// Files read back by PDFBox in its strict mode, which does not look for objects elsewhere than the
/// table says.
class ObjectFileTest {

    /// More than the first pack holds, so that objects stand in several.
    private static final int OBJECTS = 1234;

    @Test
    void everyObjectStandsWhereTheTableSays() throws IOException {
        try (ObjectFile file = new ObjectFile()) {
            int[] numbers = new int[OBJECTS];
            for (int i = 0; i < OBJECTS; i++) {
                numbers[i] = file.reserve();
                file.write(numbers[i], new Bytes().add("<</Value ").whole(i).add(">>"));
            }
            int data = file.reserve();
            file.writeStream(data, "/Value 7", new Bytes().add("some data"));
            int root = file.reserve();
            Bytes all = new Bytes().add("<</Type/Catalog/Pages<</Type/Pages/Count 0/Kids[]>>");
            all.add("/Data ").reference(data).add("/All[");
            for (int number : numbers) {
                all.reference(number).add(' ');
            }
            file.write(root, all.add("]>>"));
            read(file.finish("/Root %d 0 R".formatted(root)));
        }
    }

    private static void read(byte[] file) throws IOException {
        try (PDDocument document = new PDFParser(new RandomAccessReadBuffer(file)).parse(false)) {
            COSDictionary root = document.getDocumentCatalog().getCOSObject();
            for (int i = 0; i < OBJECTS; i++) {
                COSDictionary object =
                        (COSDictionary) root.getCOSArray(COSName.getPDFName("All")).getObject(i);
                assertThat(object.getInt("Value")).isEqualTo(i);
            }
            var stream = root.getCOSStream(COSName.getPDFName("Data"));
            assertThat(stream.toTextString()).isEqualTo("some data");
            assertThat(stream.getInt("Value")).isEqualTo(7);
        }
    }

    @Test
    void lengthsAreWrittenToHundredthsWithoutIdleZeros() {
        Bytes bytes = new Bytes();
        for (double each : new double[] {0, 1, -0.25, 12.3, 595.2756, -0.004, 0.05, 1000}) {
            bytes.length(each);
        }
        assertThat(new String(bytes.copy(), StandardCharsets.US_ASCII))
                .isEqualTo("0 1 -0.25 12.3 595.28 0 0.05 1000 ");
    }

    @Test
    void textOfEveryScriptIsReadBack() throws IOException {
        String title = "総合 (練習) \ud83e\udd8a \\ é";
        try (ObjectFile file = new ObjectFile()) {
            int pages = file.reserve();
            int tree = file.reserve();
            file.write(pages, new Bytes().add("<</Type/Pages/Count 0/Kids[]>>"));
            file.write(tree, new Bytes().add("<</Type/StructTreeRoot>>"));
            Description description = new Description(title, Locale.JAPANESE, 7);
            byte[] written = file.finish(Metadata.write(file, pages, tree, description));
            try (PDDocument document =
                    new PDFParser(new RandomAccessReadBuffer(written)).parse(false)) {
                assertThat(document.getDocumentInformation().getTitle()).isEqualTo(title);
                assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("ja");
            }
        }
    }
}
