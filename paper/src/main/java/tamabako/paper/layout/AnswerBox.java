package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.Cells;
import tamabako.paper.layout.Mark.Figures;
import tamabako.paper.layout.Mark.Words;

/// The room for an answer written by hand beside its problem: as wide as the longest answer of the
/// section in print and one digit more, so that its width tells nothing about the single answer.
/// Where something is left over in the section, each box has a place for it after the sign for a
/// remainder.
///
/// @param value the widest answer, in parts of the size of the figures
/// @param remainder the widest remainder, 0 if there is none
record AnswerBox(double value, double remainder, Setting setting) {

    private static final double SIDE = 3;

    static AnswerBox of(Section section, Setting setting) {
        List<PrintedAnswer> answers = section.problems().stream().map(PrintedAnswer::of).toList();
        double remainder = section.hasRemainders() ? PrintedAnswer.widestRemainder(answers) : 0;
        return new AnswerBox(PrintedAnswer.widestValue(answers), remainder, setting);
    }

    /// A box for answers that are no longer than what is asked, with nothing left over.
    static AnswerBox plain(Setting setting) {
        return new AnswerBox(0, 0, setting);
    }

    /// The least width of a box that a hand can write in.
    static double least(Setting setting) {
        return setting.pick(52, 80);
    }

    /// The least width for figures of that size.
    double width(double figures) {
        return valueWidth(figures) + remainderWidth(figures);
    }

    /// The width that is comfortable where there is room.
    double roomyWidth(double figures) {
        return Math.max(valueWidth(figures), setting.pick(96, 140)) + remainderWidth(figures);
    }

    double height() {
        return setting.pick(22, 32);
    }

    /// The sign for a remainder inside a box; nothing where there is no remainder.
    List<Mark> inside(double left, double width, double baseline, double figures) {
        if (remainder == 0) {
            return List.of();
        }
        double x = left + width - remainderWidth(figures) + SIDE;
        return List.of(new Words(x, baseline, Face.REGULAR, signSize(), Ink.SOFT, sign()));
    }

    /// An answer inside a box, and what is left over after the sign for it.
    List<Mark> filled(
            PrintedAnswer answer, double left, double width, double baseline, double figures) {
        double end = left + width - remainderWidth(figures) - SIDE;
        List<Mark> marks = new ArrayList<>();
        double start = end - figures * Cells.width(answer.value());
        marks.add(new Figures(start, baseline, figures, answer.value()));
        if (!answer.remainder().isEmpty()) {
            double sign = setting.width(Face.REGULAR, signSize(), sign());
            double rest = end + 2 * SIDE + sign + SIDE;
            marks.add(new Figures(rest, baseline, figures, answer.remainder()));
        }
        return marks;
    }

    private double valueWidth(double figures) {
        return Math.max(least(setting), figures * (value + Cells.DIGIT) + 2 * SIDE);
    }

    private double remainderWidth(double figures) {
        if (remainder == 0) {
            return 0;
        }
        double room = Math.max(setting.pick(34, 52), figures * (remainder + Cells.DIGIT));
        return setting.width(Face.REGULAR, signSize(), sign()) + 2 * SIDE + room;
    }

    private double signSize() {
        return setting.pick(9, 18);
    }

    private String sign() {
        return setting.words().say("remainder");
    }
}
