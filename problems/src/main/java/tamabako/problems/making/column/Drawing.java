package tamabako.problems.making.column;

import java.util.List;
import java.util.Optional;
import tamabako.problems.making.draw.Draws;

/// Draws columns that are as asked.
public final class Drawing {

    private final Asked asked;
    private final Source source;
    private final Facts facts;
    private final boolean even;

    Drawing(Asked asked, Source source, boolean even) {
        this.asked = asked;
        this.source = source;
        this.facts = asked.facts();
        this.even = even;
    }

    /// Whether no column is likelier than others with rows of the same lengths; else columns are
    /// moved about, and docs/making.md has what is likelier than it should be.
    public boolean isEven() {
        return even;
    }

    /// Draws a column; false where this try came to nothing, so that the next is due.
    public boolean draw(Draws draws) {
        return source.draw(draws, facts);
    }

    /// A row of the column that was drawn, counted from 0, with its sign and in units of the last
    /// decimal place.
    public long number(int row) {
        return facts.number(row);
    }

    /// How many strokes the column that was drawn takes, the first row included.
    public int strokes() {
        return facts.strokes();
    }

    /// Every column there is, if there are at most `limit` of them and they can be listed.
    public Optional<List<long[]>> all(int limit) {
        return Proof.all(asked, limit);
    }
}
