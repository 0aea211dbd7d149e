package tamabako.insight.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import tamabako.frame.Technique;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Mode;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Section;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Custom;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.Wish;
import tamabako.problems.making.column.HandCondition;

/// The drills that serve a section: problems rich in one move or kind of work, as long as in the
/// exam and shorter. Work in the head has none, for its slips are no moves of the hand.
final class Drills {

    /// A drill before its problems were looked at.
    ///
    /// @param level how much shorter than in the exam, 0 for as long
    record Drill(Focus focus, Source source, int level) {}

    private final Section section;
    private final List<Drill> drills = new ArrayList<>();
    private int level;

    private Drills(Section section) {
        this.section = section;
    }

    /// The drills for a section.
    static List<Drill> of(Section section) {
        Drills drills = new Drills(section);
        if (section.mode() == Mode.FRAME) {
            for (Batch batch : section.batches().subList(0, 1)) {
                drills.add(batch.format());
            }
        }
        return drills.drills;
    }

    private void add(Format format) {
        switch (format) {
            case Format.Columns columns -> columns(columns);
            case Format.Products products ->
                    products(products.inAll().least(), products.multiplier().least());
            case Format.Quotients quotients ->
                    quotients(quotients.inAll().least(), quotients.divisor().least());
            case Format.Roots _, Format.PadLines _, Format.Stories _, Format.Readings _ -> {}
        }
    }

    private void columns(Format.Columns format) {
        int rows = format.lengths().rows();
        int digits = format.lengths().digits().most();
        boolean mixed = section.batches().stream().anyMatch(Drills::isMixed);
        columns(rows, digits, mixed);
        level = 1;
        columns(rows, Math.max(1, digits * 2 / 3), mixed);
        level = 2;
        columns(Math.max(3, rows * 2 / 3), Math.max(1, digits * 2 / 3), mixed);
        level = 3;
        columns(Math.max(3, rows / 2), Math.max(1, digits / 2), mixed);
    }

    private static boolean isMixed(Batch batch) {
        return batch.format() instanceof Format.Columns columns
                && columns.signs().mixed().count() > 0;
    }

    private void columns(int rows, int digits, boolean mixed) {
        if (rows < 2) {
            return;
        }
        ColumnWish added = ColumnWish.of(rows, digits);
        move(Move.ADD_FIVE_COMPLEMENT, added, Technique.FIVE_COMPLEMENT);
        move(Move.ADD_TEN_COMPLEMENT, added, Technique.TEN_COMPLEMENT);
        move(Move.ADD_TEN_WITH_FIVE, added, Technique.TEN_WITH_FIVE);
        if (digits > 1) {
            add(Move.CARRY_RUNS_ON, added.with(new HandCondition.CarryRun(2)));
        }
        if (mixed && rows > 2) {
            ColumnWish taken = added.withMinusRows(Math.max(1, (rows - 1) / 2));
            move(Move.TAKE_FIVE_COMPLEMENT, taken, Technique.FIVE_COMPLEMENT);
            move(Move.TAKE_TEN_COMPLEMENT, taken, Technique.TEN_COMPLEMENT);
            move(Move.TAKE_TEN_WITH_FIVE, taken, Technique.TEN_WITH_FIVE);
            kind(SlipKind.SIGN_MISSED, _ -> taken);
        }
    }

    private void move(Move move, ColumnWish wish, Technique technique) {
        int digits = (wish.rows() - 1) * wish.shape().lengths().most();
        int least = Math.max(1, (int) Math.round(rich(technique) * digits));
        add(move, wish.with(new HandCondition.TechniqueCount(technique, least, HandCondition.ANY)));
    }

    /// Which part of the digits of a rich column ask for its technique, at the least: as large as
    /// columns are still found quickly for. A rod on which a complement to five was just used
    /// cannot take another at once; those to ten can follow one another.
    private static double rich(Technique technique) {
        return switch (technique) {
            case DIRECT, TEN_COMPLEMENT -> 0.65;
            case FIVE_COMPLEMENT, TEN_WITH_FIVE -> 0.4;
        };
    }

    private void add(Move move, ColumnWish wish) {
        drills.add(new Drill(new Focus.OfMove(move), new Source.OfWish(_ -> wish, section), level));
    }

    private void kind(SlipKind kind, IntFunction<Wish> wish) {
        drills.add(new Drill(new Focus.OfKind(kind), new Source.OfWish(wish, section), level));
    }

    private void products(int inAll, int multiplier) {
        for (int digits = inAll; digits >= Math.max(3, inAll - 3); digits--) {
            level = inAll - digits;
            int second = Math.clamp(multiplier, 1, digits - 1);
            ProductWish wish = new ProductWish(digits - second, second);
            kind(SlipKind.TABLE_SLIP, _ -> wish);
            if (Math.max(digits - second, second) >= 3) {
                kind(
                        SlipKind.PRODUCT_MISPLACED,
                        count -> wish.keeping(List.of(new Custom.InnerZeros(count, count))));
            }
        }
    }

    private void quotients(int inAll, int divisor) {
        for (int digits = inAll; digits >= Math.max(3, inAll - 3); digits--) {
            level = inAll - digits;
            int second = Math.clamp(divisor, 1, digits - 1);
            QuotientWish wish = new QuotientWish(second, digits - second);
            kind(SlipKind.TABLE_SLIP, _ -> wish);
            if (second >= 2) {
                kind(
                        SlipKind.QUOTIENT_OFF_BY_ONE,
                        count -> wish.keeping(List.of(new Custom.Revised((count + 1) / 2))));
            }
            if (digits - second >= 3) {
                kind(
                        SlipKind.QUOTIENT_PLACE_MISSED,
                        count -> wish.keeping(List.of(new Custom.InnerZeros(count, count))));
            }
        }
    }
}
