package tamabako.paper.layout;

import java.util.Arrays;
import java.util.List;

/// Lays the sections of a part on pages, below one head.
record Layout(Head head, Foot foot, List<Block> blocks, Setting setting) {

    /// How airy a section may be, the best first.
    static final List<Double> AIRS = List.of(1.0, 0.75, 0.5, 0.25, 0.0);

    Layout {
        blocks = List.copyOf(blocks);
    }

    /// The pages, of which the first is number `firstPage` (from 0) of its document.
    ///
    /// Begins with everything close, then lets each section, the last first, be as airy as costs no
    /// page and tears no list apart.
    Laid lay(int firstPage) {
        double[] airs = new double[blocks.size()];
        int fewest = tried(airs).pages();
        for (int i = blocks.size() - 1; i >= 0; i--) {
            airs[i] = best(airs, i, fewest);
        }
        return laid(firstPage, airs);
    }

    /// The same with all sections equally airy, for sections that are all alike.
    Laid layEvenly(int firstPage) {
        double[] airs = new double[blocks.size()];
        int fewest = tried(airs).pages();
        for (double air : AIRS) {
            Arrays.fill(airs, air);
            if (tried(airs).pages() == fewest) {
                break;
            }
        }
        return laid(firstPage, airs);
    }

    private Laid laid(int firstPage, double[] airs) {
        Flow flow = new Flow(setting.page(), firstPage, topOfLater());
        lay(flow, airs);
        finish(flow);
        return flow.laid();
    }

    private double best(double[] airs, int section, int fewest) {
        double best = 0;
        long least = Long.MAX_VALUE;
        for (double air : AIRS) {
            double[] changed = airs.clone();
            changed[section] = air;
            Flow flow = tried(changed);
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

    private Flow tried(double[] airs) {
        Flow flow = Flow.trial(setting.page(), topOfLater());
        lay(flow, airs);
        return flow;
    }

    private double topOfLater() {
        return setting.page().top() + head.laterHeight();
    }

    private void lay(Flow flow, double[] airs) {
        head.lay(flow);
        for (int i = 0; i < blocks.size(); i++) {
            Piece piece = blocks.get(i).piece();
            Block.Over over = blocks.get(i).head();
            int from = flow.put();
            flow.require(over.height() + piece.opening(airs[i]));
            flow.open(over.heading(), piece.hangsTogether());
            over.lay(flow);
            piece.lay(flow, airs[i]);
            flow.gather(from);
        }
    }

    private void finish(Flow flow) {
        for (int page = 0; page < flow.pages(); page++) {
            flow.decorate(page, foot.of(page + 1, flow.pages()).toArray(Mark[]::new));
            if (page > 0) {
                flow.decorate(page, head.later(flow.goingOn(page)).toArray(Mark[]::new));
            }
        }
    }
}
