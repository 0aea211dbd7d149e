package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Sheet;

/// What stands over a section: its kind, the points of a problem, and the rule for the answers.
///
/// @param points what stands at the right; empty for nothing
/// @param notes lines of the rule for the answers
record SectionHead(String heading, String points, List<String> notes, Setting setting)
        implements Block.Over {

    private static final double RULE = 0.6;
    private static final int MOST_LINES = 4;

    SectionHead {
        notes = List.copyOf(notes);
    }

    /// The head of a section of a sheet, or of its key, which has no notes.
    static SectionHead of(Section section, boolean key, Setting setting) {
        PrintWords words = setting.words();
        return of(section, words.say(section.heading()), key, setting);
    }

    /// The head of a section of a key among keys of other sheets: title and number of its sheet,
    /// and its kind.
    ///
    /// @param kind empty where the sheet has but one section
    static SectionHead ofSheet(Sheet sheet, Section section, String kind, Setting setting) {
        PrintWords words = setting.words();
        String number = words.say("sheet", sheet.id());
        String after = kind.isEmpty() ? number : words.say("paper.kind", number, kind);
        double size = headingSize(setting);
        double beside = setting.width(Face.BOLD, size, words.say("paper.later", "", after));
        double room = setting.across() - beside - setting.pick(90, 150);
        String title = Lines.of(setting, Face.BOLD, size, sheet.title(), room, 1).getFirst();
        return of(section, words.say("paper.later", title, after), true, setting);
    }

    /// The head of a section that goes by its own name.
    static SectionHead of(Section section, String name, boolean key, Setting setting) {
        PrintWords words = setting.words();
        String points =
                section.points().isPresent()
                        ? words.say("points", section.points().getAsInt())
                        : "";
        List<String> notes =
                key ? List.of() : lines(Notes.of(section, words), section.isMixed(), setting);
        return new SectionHead(name, points, notes, setting);
    }

    /// The same with this note.
    SectionHead noting(String note) {
        return new SectionHead(heading, points, lines(List.of(note), false, setting), setting);
    }

    @Override
    public void lay(Flow flow) {
        double size = headingSize();
        flow.down(size);
        List<Mark> marks = new ArrayList<>();
        marks.add(new Words(setting.left(), flow.y(), Face.BOLD, size, Ink.BLACK, heading));
        if (!points.isEmpty()) {
            double small = setting.size().words();
            marks.add(
                    setting.endingAt(
                            setting.right(), flow.y(), Face.REGULAR, small, Ink.BLACK, points));
        }
        flow.put(flow.leaf(Role.HEADING, marks));
        flow.down(size * 0.4);
        flow.decorate(
                new Rule(setting.left(), flow.y(), setting.right(), flow.y(), RULE, Ink.LINE));
        notes.forEach(line -> layNote(flow, line));
        flow.down(below());
    }

    @Override
    public double height() {
        return headingSize() * 1.4 + notes.size() * noteHeight() + below();
    }

    private void layNote(Flow flow, String line) {
        flow.require(noteHeight());
        flow.down(noteHeight());
        double size = setting.size().words();
        flow.put(
                flow.leaf(
                        Role.PARAGRAPH,
                        new Words(setting.left(), flow.y(), Face.REGULAR, size, Ink.BLACK, line)));
    }

    private double noteHeight() {
        return setting.size().words() * 1.5;
    }

    private double headingSize() {
        return headingSize(setting);
    }

    private static double headingSize(Setting setting) {
        return setting.pick(11, 18);
    }

    private double below() {
        return setting.pick(10, 12) + (notes.isEmpty() ? 0 : setting.pick(2, 6));
    }

    /// @param together whether notes stand in one line where it holds them
    private static List<String> lines(List<String> notes, boolean together, Setting setting) {
        double size = setting.size().words();
        String all = String.join(setting.words().say("notes.between"), notes);
        if (together && setting.width(Face.REGULAR, size, all) <= setting.across()) {
            return notes.isEmpty() ? List.of() : List.of(all);
        }
        return notes.stream()
                .flatMap(note ->
                        Lines.of(setting, Face.REGULAR, size, note, setting.across(), MOST_LINES)
                                .stream())
                .toList();
    }
}
