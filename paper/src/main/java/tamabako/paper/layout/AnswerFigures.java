package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.Cells;
import tamabako.paper.layout.Mark.Figures;
import tamabako.paper.layout.Mark.Words;

/// Answers that stand one below the other, units under units, what is left over after them.
///
/// @param values the widest value, in parts of the size of the figures
/// @param remainders the widest remainder; 0 where there is none
/// @param signSize the size of the sign for a remainder
record AnswerFigures(double values, double remainders, double signSize, Setting setting) {

    private static final double BESIDE = 0.25;

    static AnswerFigures of(List<PrintedAnswer> answers, double signSize, Setting setting) {
        return new AnswerFigures(
                PrintedAnswer.widestValue(answers),
                PrintedAnswer.widestRemainder(answers),
                signSize,
                setting);
    }

    /// The width of all of it.
    double width(double figures) {
        return figures * inFigures() + signWidth();
    }

    /// The largest size of figures that stay within `width`.
    double figuresFor(double width) {
        return (width - signWidth()) / inFigures();
    }

    /// An answer that begins at `left` where it is the widest.
    List<Mark> marks(PrintedAnswer answer, double left, double baseline, double figures) {
        double units = left + figures * values;
        double start = units - figures * Cells.width(answer.value());
        List<Mark> marks = new ArrayList<>();
        marks.add(new Figures(start, baseline, figures, answer.value()));
        if (!answer.remainder().isEmpty()) {
            double sign = units + figures * BESIDE;
            double rest = sign + signWidth() + figures * BESIDE;
            marks.add(new Words(sign, baseline, Face.REGULAR, signSize, Ink.BLACK, remainder()));
            marks.add(new Figures(rest, baseline, figures, answer.remainder()));
        }
        return marks;
    }

    private double inFigures() {
        return values + (remainders > 0 ? 2 * BESIDE : 0) + remainders;
    }

    private double signWidth() {
        return remainders > 0 ? setting.width(Face.REGULAR, signSize, remainder()) : 0;
    }

    private String remainder() {
        return setting.words().say("remainder");
    }
}
