package tamabako.paper.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import tamabako.paper.layout.Decoration;
import tamabako.paper.layout.Element;
import tamabako.paper.layout.Laid;
import tamabako.paper.layout.Page;

/// Laid pages as a tagged PDF.
public final class TaggedPdf {

    private final PDDocument document;
    private final List<PDPage> pages = new ArrayList<>();
    private final List<Pen> pens = new ArrayList<>();
    private final StructureTree tree;

    private TaggedPdf(PDDocument document, int count) throws IOException {
        this.document = document;
        this.tree = new StructureTree(count);
        DocumentFonts fonts = new DocumentFonts(document);
        for (int number = 0; number < count; number++) {
            PDPage page = new PDPage(new PDRectangle((float) Page.WIDTH, (float) Page.HEIGHT));
            page.setStructParents(number);
            page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
            document.addPage(page);
            pages.add(page);
            pens.add(new Pen(document, page, fonts));
        }
    }

    /// The file that holds the pages of `parts`, one part after the other.
    ///
    /// @param parts laid so that each begins where the one before ends
    public static byte[] of(List<Laid> parts, Description description) {
        int count = parts.stream().mapToInt(Laid::pages).sum();
        try (PDDocument document = new PDDocument()) {
            TaggedPdf pdf = new TaggedPdf(document, count);
            for (Laid part : parts) {
                pdf.draw(part);
            }
            return pdf.finish(description);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot make the PDF.", failed);
        }
    }

    private void draw(Laid part) throws IOException {
        for (Decoration decoration : part.decorations()) {
            pens.get(decoration.page()).drawSeen(decoration.marks());
        }
        for (Element element : part.elements()) {
            draw(element, tree.document());
        }
    }

    private void draw(Element element, COSDictionary parent) throws IOException {
        COSDictionary node = tree.add(parent, element.role());
        switch (element) {
            case Element.Group(_, var parts) -> {
                for (Element part : parts) {
                    draw(part, node);
                }
            }
            case Element.Leaf(var role, int page, var marks) -> {
                if (!marks.isEmpty()) {
                    COSName type = COSName.getPDFName(role.type());
                    int content = pens.get(page).drawRead(type, marks);
                    tree.stands(node, page, pages.get(page), content);
                }
            }
        }
    }

    private byte[] finish(Description description) throws IOException {
        for (Pen pen : pens) {
            pen.close();
        }
        document.getDocumentCatalog().setStructureTreeRoot(new PDStructureTreeRoot(tree.root()));
        Metadata.write(document, description);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return bytes.toByteArray();
    }
}
