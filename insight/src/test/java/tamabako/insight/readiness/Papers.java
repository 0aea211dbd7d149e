package tamabako.insight.readiness;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import tamabako.insight.pooling.Manner;
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
import tamabako.problems.marking.WritingRules;

/// Small papers of our own for the tests, and answers to them.
final class Papers {

    static final Field COLUMNS = new Field(Field.Sort.COLUMNS, Manner.FRAME);
    static final Field PRODUCTS = new Field(Field.Sort.PRODUCTS, Manner.FRAME);

    private Papers() {}

    /// A section of so many equal problems.
    static Outline.Part part(
            String id, Field field, int count, int points, double slips, double seconds, int time) {
        Format rows =
                new Format.Columns(
                        new Lengths.Equal(5, 3), Signs.ADDED, Amounts.PLAIN, Beadwork.ANY);
        Section section =
                new Section(
                        id,
                        Label.of(id, id + "の部"),
                        List.of(new Batch(count, rows)),
                        points,
                        time == 0 ? Optional.empty() : Optional.of(Duration.ofSeconds(time)),
                        Mode.FRAME,
                        Section.Order.AS_LISTED,
                        List.of());
        List<Task> tasks =
                IntStream.range(0, count).mapToObj(_ -> new Task(slips, seconds)).toList();
        return new Outline.Part(section, field, tasks);
    }

    static Outline outline(Pass pass, int time, Outline.Part... parts) {
        Grade grade =
                new Grade(
                        "our-3",
                        Label.of("Grade 3", "3級"),
                        List.of(parts).stream().map(Outline.Part::section).toList(),
                        time == 0 ? Optional.empty() : Optional.of(Duration.ofSeconds(time)),
                        pass,
                        Numbering.BY_SECTION,
                        WritingRules.EASY,
                        Optional.empty(),
                        List.of());
        return new Outline("ours", grade, List.of(parts));
    }

    static Outline twoSections() {
        return outline(
                new Pass.PointsInEach(70),
                0,
                part("columns", COLUMNS, 10, 10, 0.25, 30, 420),
                part("products", PRODUCTS, 20, 5, 0.15, 15, 420));
    }

    /// Answers, `right` of `count` right, each as long as `pace` has it.
    static List<Worked> answers(Field field, int count, int right, double slips, double pace) {
        List<Worked> answers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            answers.add(
                    new Worked(
                            field,
                            slips,
                            i < right,
                            OptionalDouble.of(pace),
                            OptionalLong.empty()));
        }
        return answers;
    }

    static Standing standing(List<Worked> some, List<Worked> others) {
        List<Worked> all = new ArrayList<>(some);
        all.addAll(others);
        return Standing.of(all, Variety.USUAL);
    }
}
