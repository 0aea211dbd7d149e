package tamabako.problems.making.column;

import tamabako.problems.making.draw.Draws;

/// A way to draw columns of which none is likelier than others of the same lengths.
interface Source {

    /// Draws a column; false, and `into` half done, where this try came to nothing.
    boolean draw(Draws draws, Facts into);

    /// Whether all columns from here meet `condition`, so that it need not be looked at.
    default boolean grants(Condition condition) {
        return false;
    }
}
