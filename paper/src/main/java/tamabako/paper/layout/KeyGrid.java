package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// The answers of a section, five across, under the numbers of the sheet.
final class KeyGrid implements Piece {

    private static final int MOST_ACROSS = 5;

    /// A key of no more rows is not torn apart by a page turn.
    private static final int MOST_WHOLE = 8;

    private final List<PrintedAnswer> answers;
    private final Setting setting;
    private final double labels;
    private final AnswerFigures figures;
    private final Across across;

    KeyGrid(Section section, Setting setting) {
        this.answers = section.problems().stream().map(PrintedAnswer::of).toList();
        this.setting = setting;
        this.labels = labels(answers, setting);
        this.figures = AnswerFigures.of(answers, setting.pick(9, 18), setting);
        this.across =
                Across.fit(
                                MOST_ACROSS,
                                setting.across(),
                                gap(),
                                setting.size(),
                                width -> figuresFor(width))
                        .orElseThrow(() -> tooWide(section));
    }

    @Override
    public boolean hangsTogether() {
        return true;
    }

    /// A short key stays whole.
    @Override
    public double opening(double air) {
        int rows = Math.ceilDiv(answers.size(), across.count());
        return (rows <= MOST_WHOLE ? rows : 2) * pitch(air);
    }

    @Override
    public void lay(Flow flow, double air) {
        List<Element> rows = new ArrayList<>();
        for (int first = 0; first < answers.size(); first += across.count()) {
            flow.require(pitch(air));
            int end = flow.isTrial() ? first : Math.min(answers.size(), first + across.count());
            for (int i = first; i < end; i++) {
                double left = setting.left() + (i - first) * (across.width() + gap());
                rows.add(answer(flow, answers.get(i), left, flow.y() + pitch(air) * 0.7));
            }
            flow.down(pitch(air));
            flow.decorate(
                    new Rule(setting.left(), flow.y(), setting.right(), flow.y(), 0.4, Ink.HAIR));
        }
        flow.put(new Element.Group(Role.TABLE, rows));
        flow.down(setting.pick(12, 18));
    }

    private Element answer(Flow flow, PrintedAnswer answer, double left, double baseline) {
        double size = labelSize(setting);
        double numberEnd = left + labels;
        double start = numberEnd + space();
        Mark number =
                setting.endingAt(numberEnd, baseline, Face.BOLD, size, Ink.BLACK, answer.label());
        return new Element.Group(
                Role.ROW,
                List.of(
                        flow.leaf(Role.HEADS_ROW, number),
                        flow.leaf(
                                Role.CELL,
                                figures.marks(answer, start, baseline, across.figures()))));
    }

    private double figuresFor(double width) {
        double most = setting.pick(12, setting.size().mostFigures());
        return Math.min(most, figures.figuresFor(width - labels - space()));
    }

    /// Between a number and its answer.
    private double space() {
        return setting.pick(9, 12);
    }

    private static double labelSize(Setting setting) {
        return setting.pick(8, 14);
    }

    private static double labels(List<PrintedAnswer> answers, Setting setting) {
        double widest =
                answers.stream()
                        .mapToDouble(
                                each -> setting.width(Face.BOLD, labelSize(setting), each.label()))
                        .max()
                        .orElseThrow();
        return Math.max(widest, setting.pick(12, 20));
    }

    private double gap() {
        return setting.pick(14, 20);
    }

    private double pitch(double air) {
        return across.figures() * (1.4 + 0.3 * air);
    }

    private Unprintable tooWide(Section section) {
        PrintedAnswer longest = PrintedAnswer.longest(section);
        return new Unprintable(
                new Reason.TooWide(longest.label(), longest.value(), setting.size()));
    }
}
