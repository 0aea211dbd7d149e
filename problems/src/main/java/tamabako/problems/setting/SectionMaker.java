package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Section;
import tamabako.problems.making.draw.Draws;

/// Makes one section of a paper, again and again from other seeds.
final class SectionMaker {

    private final Section section;
    private final List<BatchMaker> batches;

    SectionMaker(Section section, SettersCustoms customs) {
        this.section = section;
        this.batches = new ArrayList<>();
        Set<Class<?>> kinds = new HashSet<>();
        for (Batch batch : section.batches()) {
            batches.add(maker(batch, kinds.add(batch.format().getClass()), customs));
        }
    }

    private static BatchMaker maker(Batch batch, boolean isFirst, SettersCustoms customs) {
        int count = batch.count();
        return switch (batch.format()) {
            case Format.Columns columns -> new ColumnBatch(columns, count, customs);
            case Format.Products products -> FactorBatch.of(products, count, isFirst, customs);
            case Format.Quotients quotients -> FactorBatch.of(quotients, count, isFirst, customs);
            case Format.Roots roots -> FactorBatch.of(roots, count, customs);
            case Format.PadLines lines -> new PadBatch(lines, count);
            case Format.Stories stories -> new StoryBatch(stories, count);
            case Format.Readings readings -> new ReadingBatch(readings, count);
        };
    }

    /// What came of drafting a section.
    sealed interface SectionDrafted {

        record Found(SectionDraft draft) implements SectionDrafted {}

        record None(Lack lack) implements SectionDrafted {}
    }

    /// The section, its problems none of those in `taken`, to which they are added.
    SectionDrafted draft(Draws draws, Sums taken) {
        List<List<Piece>> made = new ArrayList<>();
        for (BatchMaker batch : batches) {
            switch (batch.make(draws.bits(), taken)) {
                case BatchMaker.Pieces.Found(List<Piece> pieces) -> made.add(pieces);
                case BatchMaker.Pieces.None(Lack lack) -> {
                    return new SectionDrafted.None(lack);
                }
            }
        }
        int places = made.stream().mapToInt(List::size).sum();
        return new SectionDrafted.Found(new SectionDraft(section, made, order(places, draws)));
    }

    private List<Integer> order(int places, Draws draws) {
        List<Integer> listed = IntStream.range(0, places).boxed().toList();
        return switch (section.order()) {
            case AS_LISTED -> listed;
            case MIXED -> Shuffled.of(listed, draws);
        };
    }
}
