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

/// Laid pages as a tagged PDF, one part after the other.
public final class TaggedPdf implements AutoCloseable {

    private static final COSName TABS = COSName.getPDFName("Tabs");

    private final PDDocument document = new PDDocument();
    private final List<PDPage> pages = new ArrayList<>();
    private final List<Pen> pens = new ArrayList<>();
    private final StructureTree tree = new StructureTree();
    private final DocumentFonts fonts = new DocumentFonts(document);

    /// How many pages there are so far; the next part begins with this number.
    public int pages() {
        return pages.size();
    }

    /// Adds the pages of a part.
    ///
    /// @param part laid to begin at [#pages()]
    public void add(Laid part) {
        try {
            for (int number = 0; number < part.pages(); number++) {
                addPage(part.page());
            }
            for (Decoration decoration : part.decorations()) {
                pens.get(decoration.page()).drawSeen(decoration.marks());
            }
            for (Element element : part.elements()) {
                draw(element, tree.document());
            }
            for (Pen pen : pens.subList(pens.size() - part.pages(), pens.size())) {
                pen.close();
            }
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    private void addPage(Page like) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) like.width(), (float) like.height()));
        page.setStructParents(pages.size());
        page.getCOSObject().setItem(TABS, COSName.S);
        document.addPage(page);
        pages.add(page);
        pens.add(new Pen(document, page, fonts));
        tree.addPage();
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

    /// The file.
    public byte[] finish(Description description) {
        try {
            document.getDocumentCatalog()
                    .setStructureTreeRoot(new PDStructureTreeRoot(tree.root()));
            Metadata.write(document, description);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    private static UncheckedIOException failed(IOException cause) {
        return new UncheckedIOException("Cannot make the PDF.", cause);
    }
}
