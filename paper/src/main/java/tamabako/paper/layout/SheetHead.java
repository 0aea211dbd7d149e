package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.PrintWish;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;

/// The head of a practice sheet: its title and the lines for name, date, time and score. The head
/// of its key has the title and the date.
record SheetHead(Sheet sheet, boolean key, PrintWish wish, Setting setting) implements Head {

    @Override
    public void lay(Flow flow) {
        title().lay(flow);
        if (key) {
            wish.date().ifPresent(date -> layDate(flow, date));
        } else {
            layFields(flow);
        }
        flow.down(setting.pick(14, 18));
    }

    @Override
    public List<Mark> later(String section) {
        return title().later(section, wish.name().orElse(""));
    }

    @Override
    public double laterHeight() {
        return title().laterHeight();
    }

    private Title title() {
        return new Title(sheet.title(), key ? setting.words().say("key") : "", setting);
    }

    private void layDate(Flow flow, String date) {
        double size = setting.size().words();
        flow.down(size * 1.2);
        flow.put(
                flow.leaf(
                        Role.PARAGRAPH,
                        new Words(setting.left(), flow.y(), Face.REGULAR, size, Ink.BLACK, date)));
    }

    private void layFields(Flow flow) {
        Field name = new Field("name", wish.name().orElse(""), "", 0.38);
        Field date = new Field("date", wish.date().orElse(""), "", 0.26);
        Field time = new Field("time", "", "", 0.16);
        Field score = new Field("score", "", setting.words().say("score.of", total()), 0.20);
        if (setting.large()) {
            Field.layLine(flow, setting, List.of(name.sharing(0.58), date.sharing(0.42)));
            Field.layLine(flow, setting, List.of(time.sharing(0.58), score.sharing(0.42)));
        } else {
            Field.layLine(flow, setting, List.of(name, date, time, score));
        }
    }

    /// The points of the whole sheet where every problem has some, else the number of problems.
    private String total() {
        List<Problem> problems = sheet.problems();
        boolean pointed = problems.stream().allMatch(each -> each.terms().points().isPresent());
        int points = problems.stream().mapToInt(each -> each.terms().points().orElse(0)).sum();
        return String.valueOf(pointed ? points : problems.size());
    }
}
