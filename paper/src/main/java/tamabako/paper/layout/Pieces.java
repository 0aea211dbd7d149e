package tamabako.paper.layout;

/// Which body a section has.
final class Pieces {

    private Pieces() {}

    /// The body of a section of a sheet, or of its key.
    static Piece of(Section section, boolean key, Setting setting) {
        return key ? new KeyGrid(section, setting) : asked(section, setting);
    }

    /// The problems, for the pupil.
    static Piece asked(Section section, Setting setting) {
        if (section.isMixed()) {
            return new MixedRows(MixedCells.of(section, setting), setting);
        }
        return switch (section.telling()) {
            case STORY -> new StoryList(section, setting);
            case PAD -> Lists.of(section, BoxLine.ofPad(section, setting), setting);
            case SUM ->
                    section.isOfColumns()
                            ? new ColumnBlocks(section, setting)
                            : Lists.of(section, ExpressionLine.of(section, setting), setting);
        };
    }
}
