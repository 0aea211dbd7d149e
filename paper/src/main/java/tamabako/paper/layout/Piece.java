package tamabako.paper.layout;

/// The body of a section, laid below its heading.
interface Piece {

    /// Lays all of it, over as many pages as it takes.
    ///
    /// @param air 0 as close as may be, 1 as airy as is good
    void lay(Flow flow, double air);

    /// The height that must be left below the heading for a first bit of it.
    double opening(double air);

    /// Whether it had better not be torn by a page turn.
    boolean hangsTogether();
}
