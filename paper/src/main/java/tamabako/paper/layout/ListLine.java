package tamabako.paper.layout;

/// What one line of a list is like.
interface ListLine {

    /// How many lists stand side by side.
    int across();

    /// The height of a line with the clear room below it.
    double pitch(double air);

    /// Lays a problem as a row of a table.
    ///
    /// @param index which problem of the section, from 0
    /// @param list in which list, from 0
    /// @param top where the line begins
    Element lay(Flow flow, int index, int list, double top);
}
