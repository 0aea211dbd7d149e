package tamabako.problems.setting;

import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.column.Condition;
import tamabako.problems.making.column.Customs;

/// A wish for columns that keeps the customs of papers, as far as it leaves enough columns.
///
/// @param bare the wish without customs
/// @param count how many columns a paper needs
record CustomaryColumns(ColumnWish bare, int count) {

    /// The wish with all customs that can be kept, each in its turn.
    ColumnWish wish() {
        int enough = makes(bare, ColumnBatch.wished(count)) ? ColumnBatch.wished(count) : count;
        ColumnWish all = bare.with(Customs.signsOfPapers(bare.signs(), bare.shape()));
        for (Condition custom : Customs.ofPapers(bare.shape())) {
            all = all.with(custom);
        }
        return makes(all, enough) ? all : inTurn(enough);
    }

    private ColumnWish inTurn(int enough) {
        ColumnWish signed = bare.with(Customs.signsOfPapers(bare.signs(), bare.shape()));
        ColumnWish kept = makes(signed, enough) ? signed : bare;
        for (Condition custom : Customs.ofPapers(bare.shape())) {
            ColumnWish more = kept.with(custom);
            kept = makes(more, enough) ? more : kept;
        }
        return kept;
    }

    private static boolean makes(ColumnWish wish, int columns) {
        return Maker.make(wish, columns, 0) instanceof Made.Found;
    }
}
