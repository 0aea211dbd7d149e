package tamabako.problems.setting;

import java.util.List;
import java.util.Set;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.ReadyMaker;
import tamabako.problems.making.column.Condition;
import tamabako.problems.making.column.Customs;
import tamabako.problems.making.column.Signs;

/// A wish for columns that keeps the customs of papers, as far as it leaves enough columns.
///
/// @param bare the wish without customs
/// @param count how many columns a paper needs
record CustomaryColumns(ColumnWish bare, int count) {

    /// A maker for the wish with all customs that can be kept, each in its turn.
    ReadyMaker maker() {
        ReadyMaker plain = ReadyMaker.of(bare);
        int enough = makes(plain, ColumnBatch.wished(count)) ? ColumnBatch.wished(count) : count;
        ColumnWish all = bare.with(signs());
        for (Condition custom : customs()) {
            all = isAsked(custom, all) ? all : all.with(custom);
        }
        ReadyMaker kept = ReadyMaker.of(all);
        return makes(kept, enough) ? kept : inTurn(plain, enough);
    }

    private ReadyMaker inTurn(ReadyMaker plain, int enough) {
        ReadyMaker signed = ReadyMaker.of(bare.with(signs()));
        boolean keepsSigns = makes(signed, enough);
        ColumnWish wish = keepsSigns ? bare.with(signs()) : bare;
        ReadyMaker kept = keepsSigns ? signed : plain;
        for (Condition custom : customs()) {
            ColumnWish more = wish.with(custom);
            ReadyMaker maker = ReadyMaker.of(more);
            if (!isAsked(custom, wish) && makes(maker, enough)) {
                wish = more;
                kept = maker;
            }
        }
        return kept;
    }

    /// Of customs about the same the strictest that can be kept is listed first.
    private static boolean isAsked(Condition custom, ColumnWish wish) {
        return wish.conditions().stream().anyMatch(custom::isAboutSame);
    }

    private Signs signs() {
        return Customs.signsOfPapers(bare.signs(), bare.shape());
    }

    private List<Condition> customs() {
        return Customs.ofPapers(bare.shape());
    }

    private static boolean makes(ReadyMaker maker, int columns) {
        return maker.make(columns, 0, Set.of()) instanceof Made.Found;
    }
}
