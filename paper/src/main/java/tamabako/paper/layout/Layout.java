package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Sheet;

/// Lays a sheet, or its key, on pages.
public final class Layout {

    /// How airy a section may be, the best first.
    private static final List<Double> AIRS = List.of(1.0, 0.75, 0.5, 0.25, 0.0);

    private final Head head;
    private final Foot foot;
    private final List<SectionHead> heads;
    private final List<Piece> pieces;

    private Layout(Sheet sheet, boolean key, Setting setting) {
        this.head = new Head(sheet, key, setting);
        this.foot = new Foot(sheet, setting);
        List<Section> sections = Section.of(Numbered.of(sheet));
        this.heads = sections.stream().map(each -> SectionHead.of(each, key, setting)).toList();
        this.pieces = sections.stream().map(each -> piece(each, key, setting)).toList();
    }

    /// The problems of `sheet` on pages, of which the first is number `firstPage` (from 0) of its
    /// document.
    ///
    /// @throws Unprintable if a number is too long, a column has too many rows, the font lacks a
    ///   character, or there are no problems
    public static Laid ofSheet(Sheet sheet, PrintWish wish, Measure measure, int firstPage) {
        return lay(sheet, false, wish, measure, firstPage);
    }

    /// The answers of `sheet` on pages.
    ///
    /// @throws Unprintable as [#ofSheet]
    public static Laid ofKey(Sheet sheet, PrintWish wish, Measure measure, int firstPage) {
        return lay(sheet, true, wish, measure, firstPage);
    }

    private static Laid lay(
            Sheet sheet, boolean key, PrintWish wish, Measure measure, int firstPage) {
        Legible.check(sheet, wish, measure);
        Setting setting = new Setting(wish, PrintWords.of(wish.language()), measure);
        return new Layout(sheet, key, setting).lay(firstPage);
    }

    /// Begins with everything close, then lets each section, the last first, be as airy as costs no
    /// page and tears no list apart.
    private Laid lay(int firstPage) {
        double[] airs = new double[pieces.size()];
        int fewest = laid(firstPage, airs).pages();
        for (int i = pieces.size() - 1; i >= 0; i--) {
            airs[i] = best(firstPage, airs, i, fewest);
        }
        Flow flow = laid(firstPage, airs);
        finish(flow);
        return flow.laid();
    }

    private double best(int firstPage, double[] airs, int section, int fewest) {
        double best = 0;
        long least = Long.MAX_VALUE;
        for (double air : AIRS) {
            double[] tried = airs.clone();
            tried[section] = air;
            Flow flow = laid(firstPage, tried);
            if (flow.pages() == fewest && !flow.isTorn()) {
                return air;
            }
            if (flow.cost() < least) {
                least = flow.cost();
                best = air;
            }
        }
        return best;
    }

    private Flow laid(int firstPage, double[] airs) {
        Flow flow = new Flow(firstPage, Page.TOP + head.laterHeight());
        head.lay(flow);
        for (int i = 0; i < pieces.size(); i++) {
            SectionHead over = heads.get(i);
            int from = flow.put();
            flow.require(over.height() + pieces.get(i).opening(airs[i]));
            flow.open(pieces.get(i).hangsTogether());
            over.lay(flow);
            pieces.get(i).lay(flow, airs[i]);
            flow.gather(from);
        }
        return flow;
    }

    private void finish(Flow flow) {
        for (int page = 0; page < flow.pages(); page++) {
            flow.decorate(page, foot.of(page + 1, flow.pages()).toArray(Mark[]::new));
            if (page > 0) {
                flow.decorate(page, head.later().toArray(Mark[]::new));
            }
        }
    }

    private static Piece piece(Section section, boolean key, Setting setting) {
        if (key) {
            return new KeyGrid(section, setting);
        }
        return section.isOfColumns()
                ? new ColumnBlocks(section, setting)
                : new ExpressionLists(section, setting);
    }
}
