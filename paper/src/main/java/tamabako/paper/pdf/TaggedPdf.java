package tamabako.paper.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Decoration;
import tamabako.paper.layout.Element;
import tamabako.paper.layout.Laid;
import tamabako.paper.layout.Page;

/// Laid pages as a tagged PDF, one part after the other. Pages are written as they are added; only
/// their bytes are kept.
public final class TaggedPdf implements AutoCloseable {

    private final ObjectFile file = new ObjectFile();
    private final int pageTree = file.reserve();
    private final int resources = file.reserve();
    private final StructureTree tree = new StructureTree(file);
    private final DocumentFonts fonts = new DocumentFonts(file);
    private final Bytes kids = new Bytes();
    private int pages;

    /// How many pages there are so far; the next part begins with this number.
    public int pages() {
        return pages;
    }

    /// Adds the pages of a part.
    ///
    /// @param part laid to begin at [#pages()]
    public void add(Laid part) {
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 0; i < part.pages(); i++) {
            drawn.add(new Drawn(file.reserve(), new Pen(fonts, part.page().height())));
        }
        for (Decoration decoration : part.decorations()) {
            drawn.get(decoration.page() - pages).pen().drawSeen(decoration.marks());
        }
        for (Element element : part.elements()) {
            tree.addTop(draw(element, tree.document(), drawn));
        }
        for (Drawn each : drawn) {
            write(each, part.page());
        }
    }

    /// A page while it is drawn.
    ///
    /// @param nodes the nodes of its marked contents
    private record Drawn(int number, Pen pen, Bytes nodes) {

        Drawn(int number, Pen pen) {
            this(number, pen, new Bytes());
        }
    }

    private int draw(Element element, int parent, List<Drawn> drawn) {
        int node = file.reserve();
        switch (element) {
            case Element.Group(var role, var parts) -> {
                Bytes below = new Bytes();
                for (Element part : parts) {
                    below.reference(draw(part, node, drawn)).add(' ');
                }
                tree.writeGroup(node, parent, role, below);
            }
            case Element.Leaf(var role, int _, var marks) when marks.isEmpty() ->
                    tree.writeEmpty(node, parent, role);
            case Element.Leaf(var role, int page, var marks) -> {
                Drawn on = drawn.get(page - pages);
                int content = on.pen().drawRead(role.type(), marks);
                on.nodes().reference(node).add(' ');
                tree.writeLeaf(node, parent, role, on.number(), content);
            }
        }
        return node;
    }

    private void write(Drawn page, Page like) {
        int content = file.reserve();
        file.writeStream(content, "", page.pen().content());
        Bytes object = new Bytes().add("<</Type/Page/Parent ").reference(pageTree);
        object.add("/MediaBox[0 0 ").length(like.width()).length(like.height());
        object.add("]/Resources ").reference(resources).add("/Contents ").reference(content);
        object.add("/StructParents ").whole(pages).add("/Tabs/S>>");
        file.write(page.number(), object);
        tree.writePage(page.nodes());
        kids.reference(page.number()).add(' ');
        pages++;
    }

    /// The file.
    public byte[] finish(Description description) {
        try {
            fonts.write(resources);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot embed the print font.", failed);
        }
        Bytes object = new Bytes().add("<</Type/Pages/Count ").whole(pages).add("/Kids[");
        file.write(pageTree, object.add(kids.array(), kids.length()).add("]>>"));
        tree.finish();
        return file.finish(Metadata.write(file, pageTree, tree.root(), description));
    }

    @Override
    public void close() {
        file.close();
    }
}
