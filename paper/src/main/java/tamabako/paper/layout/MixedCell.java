package tamabako.paper.layout;

import java.util.Optional;
import tamabako.paper.wish.Unprintable.Reason;

/// A problem in a cell of its own, beside problems of any other kind.
interface MixedCell {

    /// The number that is printed with it.
    String label();

    /// Its widest line, for messages.
    String told();

    /// The least width inside the cell; endless for what takes the whole width of the page.
    double width(double figures);

    /// The least height inside the cell.
    double height(double figures, double air);

    /// Why it cannot be printed in that height; empty where it can.
    default Optional<Reason> tooHigh(double figures, double height) {
        return Optional.empty();
    }

    /// Lays it, as one table.
    ///
    /// @param at the room inside the cell; at least as high as [#height]
    void lay(Flow flow, Room at, double figures, double air);

    /// Room on a page, in points.
    record Room(double left, double top, double width, double height) {

        double bottom() {
            return top + height;
        }
    }
}
