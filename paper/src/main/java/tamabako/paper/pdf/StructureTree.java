package tamabako.paper.pdf;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import tamabako.paper.layout.Role;

/// The structure tree of a document (ISO 32000-1, 14.7): what is read, in order, and for each page
/// a list that leads from its marked content back to the tree.
final class StructureTree {

    private final COSDictionary root = new COSDictionary();
    private final COSDictionary document;
    private final List<COSArray> back = new ArrayList<>();

    StructureTree() {
        root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
        document = node(root, "Document");
        COSArray kids = new COSArray();
        kids.add(document);
        root.setItem(COSName.K, kids);
    }

    /// One more page.
    void addPage() {
        back.add(new COSArray());
    }

    /// The node that all others hang from.
    COSDictionary document() {
        return document;
    }

    /// A new last child of `parent`.
    COSDictionary add(COSDictionary parent, Role role) {
        COSDictionary child = node(parent, role.type());
        switch (role) {
            case HEADS_COLUMN -> child.setItem(COSName.A, scope("Column"));
            case HEADS_ROW -> child.setItem(COSName.A, scope("Row"));
            case SECTION, TITLE, HEADING, PARAGRAPH, TABLE, ROW, CELL -> {}
        }
        kids(parent).add(child);
        return child;
    }

    /// Says that `node` is the marked content of that number on a page.
    void stands(COSDictionary node, int pageNumber, PDPage page, int content) {
        node.setItem(COSName.PG, page.getCOSObject());
        node.setInt(COSName.K, content);
        back.get(pageNumber).add(node);
    }

    /// The root, complete.
    COSDictionary root() {
        COSArray numbers = new COSArray();
        for (int page = 0; page < back.size(); page++) {
            numbers.add(COSInteger.get(page));
            numbers.add(back.get(page));
        }
        COSDictionary parentTree = new COSDictionary();
        parentTree.setItem(COSName.NUMS, numbers);
        root.setItem(COSName.PARENT_TREE, parentTree);
        root.setInt(COSName.PARENT_TREE_NEXT_KEY, back.size());
        return root;
    }

    private static COSDictionary node(COSDictionary parent, String type) {
        COSDictionary node = new COSDictionary();
        node.setItem(COSName.S, COSName.getPDFName(type));
        node.setItem(COSName.P, parent);
        return node;
    }

    private static COSArray kids(COSDictionary parent) {
        COSBase kids = parent.getDictionaryObject(COSName.K);
        if (kids instanceof COSArray array) {
            return array;
        }
        COSArray array = new COSArray();
        parent.setItem(COSName.K, array);
        return array;
    }

    private static COSDictionary scope(String value) {
        COSDictionary attributes = new COSDictionary();
        attributes.setDirect(true);
        attributes.setName(COSName.O, "Table");
        attributes.setName(COSName.getPDFName("Scope"), value);
        return attributes;
    }
}
