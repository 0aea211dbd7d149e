package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.MixedCell.Room;

/// What takes a line or two among problems of other kinds: its number in a bead, what is asked, and
/// the answer box below.
///
/// @param number what stands in its bead
record ShortCell(String label, String number, Asked asked, AnswerBox box, Setting setting)
        implements MixedCell {

    static final double LEADING = 1.5;

    /// Clear room at the sides of what is asked.
    private static final double CLEAR = 1;

    /// How much room to write between is good.
    private static final double AIRY = 12;

    /// What is asked.
    interface Asked {

        /// All of it in one line.
        String told();

        double width(double figures);

        int lines();

        /// Its marks, in the middle of a width.
        ///
        /// @param baseline of the first line
        List<Mark> marks(double left, double width, double baseline, double figures);
    }

    @Override
    public String told() {
        return asked.told();
    }

    @Override
    public double width(double figures) {
        return Math.max(asked.width(figures) + 2 * CLEAR, box.width(figures));
    }

    @Override
    public double height(double figures, double air) {
        return NumberBead.height(setting)
                + asked.lines() * figures * LEADING
                + setting.size().box()
                + ColumnForm.SIDE
                + AIRY * air;
    }

    @Override
    public void lay(Flow flow, Room at, double figures, double air) {
        double left = at.left();
        double boxHeight = setting.size().box();
        double boxTop = at.bottom() - boxHeight;
        double first = at.top() + NumberBead.height(setting) + ColumnForm.first(figures, air);
        double inBox = boxTop + (boxHeight + ColumnForm.DIGIT * figures) / 2;
        flow.decorate(new Box(left, boxTop, at.width(), boxHeight, Ink.LINE));
        flow.put(
                new Element.Group(
                        Role.TABLE,
                        List.of(
                                row(
                                        NumberBead.lay(
                                                flow, number, left, at.top(), at.width(), setting)),
                                row(
                                        flow.leaf(
                                                Role.CELL,
                                                asked.marks(left, at.width(), first, figures))),
                                row(
                                        flow.leaf(
                                                Role.CELL,
                                                box.inside(left, at.width(), inBox, figures))))));
    }

    private static Element row(Element cell) {
        return new Element.Group(Role.ROW, List.of(cell));
    }
}
