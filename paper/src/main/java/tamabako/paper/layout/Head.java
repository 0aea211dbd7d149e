package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Dot;
import tamabako.paper.layout.Mark.Words;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;

/// The head of a part: its title, and on the sheet the lines for name, date, time and score.
record Head(Sheet sheet, boolean key, Setting setting) {

    private static final int MOST_LINES = 3;
    private static final double CLEAR = 12;
    private static final double BEAM = 5;
    private static final int UNIT_POINTS = 9;

    /// Lays the head on the first page.
    void lay(Flow flow) {
        layBeam(flow);
        double size = setting.pick(17, 24);
        double titleWidth = Page.across() - (key ? keyWidth() + CLEAR : 0);
        double top = flow.y();
        List<Mark> title = new ArrayList<>();
        for (String line : titleLines(size, titleWidth)) {
            flow.down(size * 1.2);
            title.add(new Words(Page.LEFT, flow.y(), Face.BOLD, size, Ink.BLACK, line));
        }
        flow.put(flow.leaf(Role.TITLE, title.toArray(Mark[]::new)));
        flow.down(setting.pick(6, 8));
        if (key) {
            layKeyLabel(flow, top);
            setting.wish().date().ifPresent(date -> layDate(flow, date));
        } else {
            layFields(flow);
        }
        flow.down(setting.pick(14, 18));
    }

    /// The beam of a frame with its unit points, as an ornament.
    private static void layBeam(Flow flow) {
        double middle = flow.y() + BEAM / 2;
        flow.decorate(new Box(Page.LEFT, flow.y(), Page.across(), BEAM, Ink.LINE));
        double apart = Page.across() / UNIT_POINTS;
        for (int i = 0; i < UNIT_POINTS; i++) {
            flow.decorate(new Dot(Page.LEFT + (i + 0.5) * apart, middle, 1.1, Ink.LINE));
        }
        flow.down(BEAM + 6);
    }

    private List<String> titleLines(double size, double width) {
        return Lines.of(setting, Face.BOLD, size, sheet.title(), width, MOST_LINES);
    }

    private double keyWidth() {
        return setting.width(Face.BOLD, labelSize(), setting.words().say("key")) + 2 * CLEAR;
    }

    private double labelSize() {
        return setting.pick(12, 20);
    }

    private void layKeyLabel(Flow flow, double top) {
        double size = labelSize();
        double left = Page.RIGHT - keyWidth();
        flow.decorate(new Box(left, top, keyWidth(), size * 1.7, Ink.BLACK));
        flow.put(
                flow.leaf(
                        Role.PARAGRAPH,
                        setting.centred(
                                left + keyWidth() / 2,
                                top + size * 1.2,
                                Face.BOLD,
                                size,
                                setting.words().say("key"))));
    }

    private void layDate(Flow flow, String date) {
        double size = setting.size().words();
        flow.down(size * 1.2);
        flow.put(
                flow.leaf(
                        Role.PARAGRAPH,
                        new Words(Page.LEFT, flow.y(), Face.REGULAR, size, Ink.BLACK, date)));
    }

    private void layFields(Flow flow) {
        double line = setting.pick(26, 36);
        Field name = new Field("name", setting.wish().name().orElse(""), "", 0.38);
        Field date = new Field("date", setting.wish().date().orElse(""), "", 0.26);
        Field time = new Field("time", "", "", 0.16);
        Field score = new Field("score", "", setting.words().say("score.of", total()), 0.20);
        if (setting.large()) {
            layFields(flow, line, List.of(name.sharing(0.58), date.sharing(0.42)));
            layFields(flow, line, List.of(time.sharing(0.58), score.sharing(0.42)));
        } else {
            layFields(flow, line, List.of(name, date, time, score));
        }
    }

    private void layFields(Flow flow, double height, List<Field> fields) {
        flow.down(height);
        double size = setting.size().words();
        double left = Page.LEFT;
        for (Field field : fields) {
            double right = left + field.share() * Page.across();
            field.lay(flow, setting, left, right - (right < Page.RIGHT - 1 ? size : 0));
            left = right;
        }
    }

    /// The points of the whole sheet where every problem has some, else the number of problems.
    private String total() {
        List<Problem> problems = sheet.problems();
        boolean pointed = problems.stream().allMatch(each -> each.terms().points().isPresent());
        int points = problems.stream().mapToInt(each -> each.terms().points().orElse(0)).sum();
        return String.valueOf(pointed ? points : problems.size());
    }

    /// What later pages have at the top, so that loose leaves find together again.
    List<Mark> later() {
        double size = setting.pick(9, 12);
        double baseline = Page.TOP + size;
        double half = Page.across() / 2;
        List<Mark> marks = new ArrayList<>();
        String title =
                Lines.of(setting, Face.BOLD, size, sheet.title(), half - CLEAR, 1).getFirst();
        marks.add(new Words(Page.LEFT, baseline, Face.BOLD, size, Ink.SOFT, title));
        if (key) {
            String label = setting.words().say("key");
            marks.add(setting.endingAt(Page.RIGHT, baseline, Face.BOLD, size, Ink.SOFT, label));
            return marks;
        }
        new Field("name", setting.wish().name().orElse(""), "", 1)
                .draw(marks, setting, Page.LEFT + half, Page.RIGHT, baseline, size);
        return marks;
    }

    /// The height of what later pages have at the top.
    double laterHeight() {
        return setting.pick(9, 12) + setting.pick(20, 28);
    }
}
