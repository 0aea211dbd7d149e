package tamabako.paper.layout;

/// What an element is to a reader who cannot see it; the standard structure types of PDF 1.7 (ISO
/// 32000-1, 14.8.4).
public enum Role {
    /// A part of the sheet with a heading of its own.
    SECTION("Sect"),
    TITLE("H1"),
    HEADING("H2"),
    PARAGRAPH("P"),
    TABLE("Table"),
    ROW("TR"),
    /// A cell that heads the cells below it.
    HEADS_COLUMN("TH"),
    /// A cell that heads the cells right of it.
    HEADS_ROW("TH"),
    CELL("TD");

    private final String type;

    Role(String type) {
        this.type = type;
    }

    /// The name of the structure type.
    public String type() {
        return type;
    }
}
