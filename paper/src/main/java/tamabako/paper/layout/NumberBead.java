package tamabako.paper.layout;

import tamabako.paper.layout.Mark.Bead;

/// The number of a problem in a bead, over the problem.
final class NumberBead {

    private NumberBead() {}

    /// The height of the bead and of the clear room below it.
    static double height(Setting setting) {
        return size(setting) * 1.5 + 3;
    }

    /// Draws the bead in the middle of a width, and gives the words in it, which head a column.
    ///
    /// @param text is made smaller where the width is too narrow for it
    static Element.Leaf lay(
            Flow flow, String text, double left, double top, double width, Setting setting) {
        double fitting = width / setting.width(Face.BOLD, 1, text);
        double size = Math.min(size(setting), fitting);
        double middle = left + width / 2;
        double bead = Math.min(width, setting.width(Face.BOLD, size, text) + size * 2);
        flow.decorate(new Bead(middle - bead / 2, top, bead, size * 1.5, Ink.LINE));
        return flow.leaf(
                Role.HEADS_COLUMN,
                setting.centred(middle, top + size * 1.08, Face.BOLD, size, text));
    }

    private static double size(Setting setting) {
        return setting.pick(9, 14);
    }
}
