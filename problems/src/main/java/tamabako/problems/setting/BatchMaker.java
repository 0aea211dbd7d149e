package tamabako.problems.setting;

import java.util.List;

/// Makes the problems of one batch of a paper, again and again from other seeds.
interface BatchMaker {

    /// The pieces of the batch in their order.
    ///
    /// @param taken what was set already and is not to be set again
    Pieces make(long seed, Sums taken);

    /// What came of a batch.
    sealed interface Pieces {

        record Found(List<Piece> pieces) implements Pieces {
            public Found {
                pieces = List.copyOf(pieces);
            }
        }

        record None(Lack lack) implements Pieces {}
    }
}
