package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tamabako.paper.layout.Expression.Widths;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.PadLine;
import tamabako.problems.Story;

/// Makes the cells of a section in which kinds alternate.
///
/// An answer box tells nothing about the single answer: problems with one rule for their answers
/// have the same room in it, and where the rule is to write all there is, what is asked is longer
/// than the answer.
///
/// @param boxes by the rules for the answers; none for the rule to write all
/// @param pads the box of what a slip pad asks for
/// @param tellsModes whether some of it is done in the head and some on the frame, so that each
///   cell must tell
record MixedCells(
        Map<AnswerRule, AnswerBox> boxes, AnswerBox pads, boolean tellsModes, Setting setting) {

    /// The cells of `section`, in its order.
    static List<MixedCell> of(Section section, Setting setting) {
        Map<AnswerRule, List<Numbered>> rules = new HashMap<>();
        for (Numbered each : section.told(Telling.SUM)) {
            rules.computeIfAbsent(AnswerRule.of(each.problem()), _ -> new ArrayList<>()).add(each);
        }
        Map<AnswerRule, AnswerBox> boxes = new HashMap<>();
        rules.forEach((rule, some) -> {
            if (!(rule instanceof AnswerRule.Exact)) {
                boxes.put(rule, AnswerBox.of(new Section(some), setting));
            }
        });
        List<Numbered> lines = section.told(Telling.PAD);
        AnswerBox pads =
                lines.isEmpty()
                        ? AnswerBox.plain(setting)
                        : AnswerBox.of(new Section(lines), setting);
        MixedCells cells = new MixedCells(boxes, pads, section.mode().isEmpty(), setting);
        return section.problems().stream().map(cells::cell).toList();
    }

    private MixedCell cell(Numbered numbered) {
        return numbered.problem()
                .terms()
                .told()
                .map(told ->
                        switch (told) {
                            case Story _ -> story(numbered);
                            case PadLine line -> brief(numbered, PadWords.of(line, setting), pads);
                        })
                .orElseGet(() -> sum(numbered));
    }

    private MixedCell sum(Numbered numbered) {
        if (numbered.problem() instanceof Column) {
            return new ColumnCell(number(numbered), PrintedColumn.of(numbered), setting);
        }
        Expression expression = Expression.of(numbered);
        AnswerBox box =
                boxes.getOrDefault(AnswerRule.of(numbered.problem()), AnswerBox.plain(setting));
        return brief(numbered, new Sum(expression, Widths.of(List.of(expression))), box);
    }

    private MixedCell brief(Numbered numbered, ShortCell.Asked asked, AnswerBox box) {
        return new ShortCell(numbered.label(), number(numbered), asked, box, setting);
    }

    private MixedCell story(Numbered numbered) {
        double labels = Labels.width(List.of(numbered.label()), setting);
        AnswerBox box = AnswerBox.of(new Section(List.of(numbered)), setting);
        double width = setting.across() - 2 * MixedGrid.inset(setting);
        return new StoryCell(PrintedStory.of(numbered, box, labels, width, setting));
    }

    private String number(Numbered numbered) {
        Mode mode = numbered.problem().terms().mode();
        String key = tellsModes ? "problem." + mode.word() : "problem";
        return setting.words().say(key, numbered.label());
    }

    /// A product, quotient or root.
    private record Sum(Expression expression, Widths widths) implements ShortCell.Asked {

        @Override
        public String told() {
            return expression.told();
        }

        @Override
        public double width(double figures) {
            return figures * widths.whole();
        }

        @Override
        public int lines() {
            return 1;
        }

        @Override
        public List<Mark> marks(double left, double width, double baseline, double figures) {
            double start = left + (width - width(figures)) / 2;
            return expression.marks(widths, start, baseline, figures);
        }
    }
}
