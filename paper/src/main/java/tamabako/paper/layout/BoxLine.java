package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;
import tamabako.problems.PadLine;

/// Lines with no sum: what a slip pad asks for, or nothing but the number of a called problem; each
/// with a box for the answer.
final class BoxLine implements ListLine {

    private static final double STEP = 0.5;

    private final List<String> numbers;
    private final List<List<String>> cells;
    private final AnswerBox box;
    private final Across across;
    private final Setting setting;

    private BoxLine(Section section, List<List<String>> cells, int most, Setting setting) {
        this.numbers = section.problems().stream().map(Numbered::label).toList();
        this.cells = cells;
        this.box = AnswerBox.of(section, setting);
        this.setting = setting;
        this.across =
                Across.fit(most, setting.across(), gap(), setting.size(), this::figuresFor)
                        .orElseThrow(() -> tooWide(section));
    }

    /// What a slip pad asks for: a line, and from which leaf to which.
    static BoxLine ofPad(Section section, Setting setting) {
        List<List<String>> cells = new ArrayList<>();
        for (Numbered each : section.problems()) {
            PadLine asked = (PadLine) each.problem().terms().told().orElseThrow();
            cells.add(PadWords.of(asked, setting).words());
        }
        return new BoxLine(section, cells, 2, setting);
    }

    /// Room for the answers to what is called.
    static BoxLine ofCalled(Section section, Setting setting) {
        List<List<String>> cells = section.problems().stream().map(_ -> List.<String>of()).toList();
        return new BoxLine(section, cells, 3, setting);
    }

    @Override
    public int across() {
        return across.count();
    }

    @Override
    public double pitch(double air) {
        return box.height() + setting.pick(5, 8) + 16 * air;
    }

    @Override
    public Element lay(Flow flow, int index, int list, double top) {
        double left = setting.left() + list * (across.width() + gap());
        double x = left + labels();
        double baseline = top + box.height() / 2 + size() * 0.38;
        List<Element> row = new ArrayList<>();
        row.add(flow.leaf(Role.HEADS_ROW, Labels.mark(numbers.get(index), x, baseline, setting)));
        List<String> words = cells.get(index);
        for (int i = 0; i < words.size(); i++) {
            row.add(
                    flow.leaf(
                            Role.CELL,
                            new Words(x, baseline, Face.REGULAR, size(), Ink.BLACK, words.get(i))));
            x += width(i) + between();
        }
        double width = Math.min(box.roomyWidth(across.figures()), left + across.width() - x);
        flow.decorate(new Box(x, top, width, box.height(), Ink.LINE));
        row.add(flow.leaf(Role.CELL, box.inside(x, width, baseline, across.figures())));
        return new Element.Group(Role.ROW, row);
    }

    private double figuresFor(double width) {
        double room = width - labels();
        for (int i = 0; i < cells.getFirst().size(); i++) {
            room -= width(i) + between();
        }
        double figures = setting.size().mostFigures();
        while (figures > 0 && box.width(figures) > room) {
            figures -= STEP;
        }
        return figures;
    }

    private double width(int cell) {
        return cells.stream()
                .mapToDouble(words -> setting.width(Face.REGULAR, size(), words.get(cell)))
                .max()
                .orElseThrow();
    }

    private double labels() {
        return Labels.width(numbers, setting) + further();
    }

    /// Words stand further from the number than a box does, so that two numbers are not read as
    /// one.
    private double further() {
        return cells.getFirst().isEmpty() ? 0 : setting.pick(5, 8);
    }

    private double size() {
        return setting.pick(10, 18);
    }

    private double between() {
        return setting.pick(6, 14);
    }

    private double gap() {
        return setting.pick(18, 24);
    }

    private Unprintable tooWide(Section section) {
        PrintedAnswer longest = PrintedAnswer.longest(section);
        return new Unprintable(
                new Reason.TooWide(longest.label(), longest.value(), setting.size()));
    }
}
