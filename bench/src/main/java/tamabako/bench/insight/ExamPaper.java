package tamabako.bench.insight;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tamabako.insight.pooling.Manner;
import tamabako.insight.readiness.Field;
import tamabako.insight.readiness.Outline;
import tamabako.insight.readiness.ScoreChances;
import tamabako.insight.readiness.Task;
import tamabako.problems.Mode;
import tamabako.problems.grade.Amounts;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Beadwork;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Numbering;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.Signs;
import tamabako.problems.grade.Span;
import tamabako.problems.marking.WritingRules;

/// The paper that simulated pupils sit: columns, products and quotients. Difficulties rise evenly,
/// and times with them.
final class ExamPaper {

    static final int SECTIONS = 3;
    static final int[] COUNT = {10, 20, 20};
    static final int[] POINTS = {10, 5, 5};

    /// The mean ability of pupils in each section.
    static final double[] ABILITY = {1.45, 1.45, 1.45};

    private static final double[] SECONDS = {31, 15.5, 15.5};
    private static final double HARDEST = 0.8;
    private static final double LONGER = 0.09;

    private ExamPaper() {}

    static double difficulty(int section, int place) {
        return -HARDEST + 2 * HARDEST * place / (COUNT[section] - 1);
    }

    /// The time that a problem takes pupils in general.
    static double seconds(int section, double difficulty) {
        return SECONDS[section] * Math.exp(LONGER * difficulty);
    }

    /// The slips that pupils in general are expected to make, so that their problems go right as
    /// often as those of a pupil of mean ability.
    static double slips(int section, double difficulty) {
        return -Math.log(ExamPupil.right(ABILITY[section], difficulty));
    }

    static ScoreChances chances(int section, double ability, double pace, double limit) {
        List<ScoreChances.Item> items =
                IntStream.range(0, COUNT[section])
                        .mapToObj(i -> {
                            double difficulty = difficulty(section, i);
                            return new ScoreChances.Item(
                                    ExamPupil.right(ability, difficulty),
                                    POINTS[section],
                                    seconds(section, difficulty) * Math.exp(pace));
                        })
                        .toList();
        return ScoreChances.of(items, ExamPupil.SPREAD, limit);
    }

    /// The outline of the paper.
    static Outline outline() {
        List<Field.Sort> sorts =
                List.of(Field.Sort.COLUMNS, Field.Sort.PRODUCTS, Field.Sort.QUOTIENTS);
        List<Outline.Part> parts = new ArrayList<>();
        for (int s = 0; s < SECTIONS; s++) {
            int section = s;
            List<Task> tasks =
                    IntStream.range(0, COUNT[s])
                            .mapToDouble(i -> difficulty(section, i))
                            .mapToObj(one -> new Task(slips(section, one), seconds(section, one)))
                            .toList();
            parts.add(new Outline.Part(section(s), new Field(sorts.get(s), Manner.FRAME), tasks));
        }
        Grade grade =
                new Grade(
                        "simulated",
                        Label.of("simulated"),
                        parts.stream().map(Outline.Part::section).toList(),
                        Optional.empty(),
                        new Pass.PointsInEach(ExamPupil.PASS),
                        Numbering.BY_SECTION,
                        WritingRules.EASY,
                        Optional.empty(),
                        List.of());
        return new Outline("simulated", grade, parts);
    }

    private static Section section(int section) {
        Format rows =
                new Format.Columns(
                        new Lengths.Equal(5, 3), Signs.ADDED, Amounts.PLAIN, Beadwork.ANY);
        Format numbers =
                new Format.Products(Span.of(5), Span.of(3), Span.of(2), Format.Answers.EXACT);
        return new Section(
                "section-" + section,
                Label.of("Section " + section),
                List.of(new Batch(COUNT[section], section == 0 ? rows : numbers)),
                POINTS[section],
                Optional.of(Duration.ofSeconds((long) ExamPupil.LIMIT)),
                Mode.FRAME,
                Section.Order.AS_LISTED,
                List.of());
    }
}
