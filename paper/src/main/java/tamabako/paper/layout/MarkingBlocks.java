package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.setting.PaperSection;

/// The sections of a marking sheet: one page where its figures can still be read easily, the larger
/// the better; else as many pages as it takes.
record MarkingBlocks(PaperFacts facts, Setting setting) {

    private static final double LARGEST = 11;
    private static final double SMALLEST = 7;
    private static final double STEP = 0.5;

    /// Where one page does not do.
    private static final double ON_MORE_PAGES = 8.5;

    /// @param head what stands above them
    List<Block> blocks(Head head) {
        double figures = LARGEST;
        double room = setting.page().bottom() - below(head);
        while (figures > SMALLEST && height(blocks(figures)) > room) {
            figures -= STEP;
        }
        return blocks(height(blocks(figures)) > room ? ON_MORE_PAGES : figures);
    }

    private List<Block> blocks(double figures) {
        List<Block> blocks = new ArrayList<>();
        for (PaperSection each : facts.paper().sections()) {
            List<Numbered> problems = Numbered.of(each.problems());
            TickLine line = TickLine.of(new Section(problems), figures, setting);
            int points = each.section().points();
            int full = each.section().fullMarks();
            blocks.add(
                    new Block(
                            new MarkingHead(facts.name(each), points, full, setting),
                            Lists.of(problems.size(), line, setting)));
        }
        int full = facts.paper().grade().fullMarks();
        String total = setting.words().say("marking.total");
        blocks.add(
                new Block(new MarkingHead(total, 0, full, setting), new Verdict(facts, setting)));
        return blocks;
    }

    private static double height(List<Block> blocks) {
        double height = 0;
        for (Block block : blocks) {
            height += block.head().height();
            height +=
                    switch (block.piece()) {
                        case Lists lists -> lists.height();
                        case Verdict verdict -> verdict.height();
                        default -> 0;
                    };
        }
        return height;
    }

    /// Where the head ends.
    private double below(Head head) {
        Flow flow = new Flow(setting.page(), 0, setting.page().top());
        head.lay(flow);
        return flow.y();
    }
}
