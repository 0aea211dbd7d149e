package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Words;
import tamabako.problems.grade.Pass;

/// The end of a marking sheet: what has to be reached, with a box to tick, or the ranks with the
/// points that each asks for.
record Verdict(PaperFacts facts, Setting setting) implements Piece {

    private static final double SIZE = 10;
    private static final double LINE = 15;
    private static final double TICK = 9;
    private static final double RANK = 9;

    @Override
    public boolean hangsTogether() {
        return true;
    }

    @Override
    public double opening(double air) {
        return height();
    }

    @Override
    public void lay(Flow flow, double air) {
        flow.require(height());
        double baseline = flow.y() + SIZE;
        flow.put(
                flow.leaf(
                        Role.PARAGRAPH,
                        new Words(
                                setting.left(),
                                baseline,
                                Face.REGULAR,
                                SIZE,
                                Ink.BLACK,
                                facts.pass())));
        List<Pass.Rank> ranks = facts.ranks();
        if (ranks.isEmpty()) {
            double left = setting.left() + setting.width(Face.REGULAR, SIZE, facts.pass()) + 8;
            flow.decorate(new Box(left, baseline - SIZE * 0.9, TICK * 1.2, TICK * 1.2, Ink.LINE));
        }
        flow.down(LINE);
        layRanks(flow, ranks);
        layUnconfirmed(flow);
    }

    /// The height of it all.
    double height() {
        int lines = Math.ceilDiv(facts.ranks().size(), ranksAcross());
        return LINE + lines * LINE + (facts.unconfirmed().isPresent() ? LINE : 0);
    }

    private void layRanks(Flow flow, List<Pass.Rank> ranks) {
        double width = setting.across() / ranksAcross();
        List<Element> rows = new ArrayList<>();
        for (int i = 0; i < ranks.size(); i++) {
            double left = setting.left() + (i % ranksAcross()) * width;
            int row = i / ranksAcross();
            double baseline = flow.y() + row * LINE + SIZE;
            flow.decorate(new Box(left, baseline - TICK * 0.9, TICK, TICK, Ink.LINE));
            rows.add(rank(flow, ranks.get(i), left + TICK + 4, baseline));
        }
        if (!rows.isEmpty()) {
            flow.put(new Element.Group(Role.TABLE, rows));
        }
        flow.down(Math.ceilDiv(ranks.size(), ranksAcross()) * LINE);
    }

    private Element rank(Flow flow, Pass.Rank rank, double left, double baseline) {
        String points = setting.words().say("marking.from", rank.points());
        double after = left + setting.width(Face.BOLD, RANK, name(rank)) + 5;
        return new Element.Group(
                Role.ROW,
                List.of(
                        flow.leaf(
                                Role.HEADS_ROW,
                                new Words(left, baseline, Face.BOLD, RANK, Ink.BLACK, name(rank))),
                        flow.leaf(
                                Role.CELL,
                                new Words(
                                        after, baseline, Face.REGULAR, RANK, Ink.BLACK, points))));
    }

    /// As many ranks side by side as the longest name lets.
    private int ranksAcross() {
        double widest =
                facts.ranks().stream()
                        .mapToDouble(rank -> setting.width(Face.BOLD, RANK, name(rank)))
                        .max()
                        .orElse(0);
        return Math.max(1, (int) (setting.across() / (TICK + widest + 66)));
    }

    private String name(Pass.Rank rank) {
        return rank.name().in(setting.words().language());
    }

    private void layUnconfirmed(Flow flow) {
        facts.unconfirmed()
                .ifPresent(note ->
                        flow.put(
                                flow.leaf(
                                        Role.PARAGRAPH,
                                        new Words(
                                                setting.left(),
                                                flow.y() + 8,
                                                Face.REGULAR,
                                                8,
                                                Ink.SOFT,
                                                note))));
        flow.down(facts.unconfirmed().isPresent() ? LINE : 0);
    }
}
