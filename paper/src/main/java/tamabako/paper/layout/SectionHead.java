package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Problem;

/// What stands over a section: its kind, the points of a problem, and the rule for the answers.
record SectionHead(Section section, List<String> notes, Setting setting) {

    private static final double RULE = 0.6;
    private static final int MOST_LINES = 4;

    /// The head of a section of a sheet, or of its key, which has no notes.
    static SectionHead of(Section section, boolean key, Setting setting) {
        return new SectionHead(section, key ? List.of() : noteLines(section, setting), setting);
    }

    void lay(Flow flow) {
        double size = headingSize();
        PrintWords words = setting.words();
        flow.down(size);
        List<Mark> heading = new ArrayList<>();
        String kind = words.say(section.heading());
        heading.add(new Words(setting.left(), flow.y(), Face.BOLD, size, Ink.BLACK, kind));
        section.points()
                .ifPresent(points -> heading.add(pointsAtRight(flow, words.say("points", points))));
        flow.put(flow.leaf(Role.HEADING, heading.toArray(Mark[]::new)));
        flow.down(size * 0.4);
        flow.decorate(new Rule(setting.left(), flow.y(), setting.right(), flow.y(), RULE, Ink.LINE));
        for (String line : notes) {
            flow.down(noteHeight());
            flow.put(
                    flow.leaf(
                            Role.PARAGRAPH,
                            new Words(
                                    setting.left(),
                                    flow.y(),
                                    Face.REGULAR,
                                    setting.size().words(),
                                    Ink.BLACK,
                                    line)));
        }
        flow.down(below());
    }

    double height() {
        return headingSize() * 1.4 + notes.size() * noteHeight() + below();
    }

    private double noteHeight() {
        return setting.size().words() * 1.5;
    }

    private double headingSize() {
        return setting.pick(11, 18);
    }

    private double below() {
        return setting.pick(10, 12) + (notes.isEmpty() ? 0 : setting.pick(2, 6));
    }

    private Words pointsAtRight(Flow flow, String points) {
        return setting.endingAt(
                setting.right(), flow.y(), Face.REGULAR, setting.size().words(), Ink.BLACK, points);
    }

    private static List<String> noteLines(Section section, Setting setting) {
        double size = setting.size().words();
        return notes(section, setting.words()).stream()
                .flatMap(note ->
                        Lines.of(setting, Face.REGULAR, size, note, setting.across(), MOST_LINES)
                                .stream())
                .toList();
    }

    private static List<String> notes(Section section, PrintWords words) {
        Map<Boolean, List<Problem>> byUnit = section.byUnit();
        Optional<String> plain = AnswerRule.told(byUnit.getOrDefault(false, List.of()), words);
        Optional<String> amounts = AnswerRule.told(byUnit.getOrDefault(true, List.of()), words);
        boolean both = byUnit.values().stream().noneMatch(List::isEmpty);
        List<String> notes = new ArrayList<>();
        plain.map(note -> both ? words.say("note.plain", note) : note).ifPresent(notes::add);
        amounts.map(note -> both ? words.say("note.unit", note) : note).ifPresent(notes::add);
        return notes;
    }
}
