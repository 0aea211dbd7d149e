package tamabako.paper.pdf;

import tamabako.paper.layout.Role;

/// The structure tree of a document (ISO 32000-1, 14.7): what is read, in order, and for each page
/// a list that leads from its marked content back to the tree. Every node is written as soon as all
/// below it are.
final class StructureTree {

    private final ObjectFile file;
    private final int root;
    private final int document;
    private final Bytes top = new Bytes();
    private final Bytes pages = new Bytes();
    private int pageCount;

    StructureTree(ObjectFile file) {
        this.file = file;
        this.root = file.reserve();
        this.document = file.reserve();
    }

    int root() {
        return root;
    }

    /// The node that all others hang from.
    int document() {
        return document;
    }

    /// Adds a node that hangs from the document.
    void addTop(int node) {
        top.reference(node).add(' ');
    }

    /// Writes a node of nodes.
    void writeGroup(int node, int parent, Role role, Bytes kids) {
        Bytes object = begin(parent, role).add("/K[").add(kids.array(), kids.length());
        file.write(node, object.add("]>>"));
    }

    /// Writes a node that is the marked content of that number on a page.
    void writeLeaf(int node, int parent, Role role, int page, int content) {
        Bytes object = begin(parent, role).add("/Pg ").reference(page);
        file.write(node, object.add("/K ").whole(content).add(">>"));
    }

    /// Writes a node with nothing in it.
    void writeEmpty(int node, int parent, Role role) {
        file.write(node, begin(parent, role).add(">>"));
    }

    /// One more page.
    ///
    /// @param nodes the nodes of its marked contents, in their order
    void writePage(Bytes nodes) {
        int list = file.reserve();
        file.write(list, new Bytes().add('[').add(nodes.array(), nodes.length()).add(']'));
        pages.whole(pageCount++).add(' ').reference(list).add(' ');
    }

    /// Writes what all hangs from.
    void finish() {
        Bytes node = new Bytes().add("<</S/Document/P ").reference(root).add("/K[");
        file.write(document, node.add(top.array(), top.length()).add("]>>"));
        Bytes object = new Bytes().add("<</Type/StructTreeRoot/K[").reference(document);
        object.add("]/ParentTree<</Nums[").add(pages.array(), pages.length());
        file.write(root, object.add("]>>/ParentTreeNextKey ").whole(pageCount).add(">>"));
    }

    private static Bytes begin(int parent, Role role) {
        Bytes object = new Bytes().add("<</S/").add(role.type()).add("/P ").reference(parent);
        return switch (role) {
            case HEADS_COLUMN -> object.add("/A<</O/Table/Scope/Column>>");
            case HEADS_ROW -> object.add("/A<</O/Table/Scope/Row>>");
            case SECTION, TITLE, HEADING, PARAGRAPH, TABLE, ROW, CELL -> object;
        };
    }
}
