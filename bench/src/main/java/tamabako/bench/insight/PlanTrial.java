package tamabako.bench.insight;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import tamabako.insight.mastery.Demand;
import tamabako.insight.mastery.MasteryAnswer;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.plan.Choice;
import tamabako.insight.plan.Exercise;
import tamabako.insight.plan.Exercises;
import tamabako.insight.plan.Focus;
import tamabako.insight.plan.Lacks;
import tamabako.insight.plan.Learning;
import tamabako.insight.plan.Load;
import tamabako.insight.plan.Need;
import tamabako.insight.plan.Planner;
import tamabako.insight.plan.Practised;
import tamabako.insight.pooling.Manner;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.EventTables;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;
import tamabako.problems.Attempt;
import tamabako.problems.Column;
import tamabako.problems.effort.Effort;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;

/// What different ways to choose practice gain in an exam's columns, for simulated pupils who slip
/// more often in some moves than in others, and less often in each the more they meet it.
///
/// All ways have the same time. Pupils work bead by bead, and the judge sees only what is written.
final class PlanTrial {

    /// Ways to choose what is practised.
    enum Way {
        EXAM_ONLY("as in the exam only"),
        ROTATE("each drill in turn"),
        MOST_USED("the move that is used most"),
        BY_WRONG("the move in which most goes wrong, by right and wrong"),
        LIKELIEST("as if the likeliest were sure"),
        OURS("**ours**, one pupil drawn for each problem"),
        OURS_OF_EIGHT("**ours**, eight pupils drawn for each problem"),
        ORACLE("true rates");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /// Five lessons of twenty problems.
    private static final int LESSONS = 5;

    private static final int LESSON = 20;
    private static final int POOL = 60;
    private static final double SHARED = 0.4;
    private static final double OWN = 0.9;
    private static final int POINTS = 100;

    /// A problem that is ready to be worked.
    @SuppressWarnings("ArrayRecordComponent") // reckoned with, never compared
    private record Ready(Column column, EventTable table, double[] expected, Load load) {

        static Ready of(Column column, EventTables tables) {
            EventTable table = tables.of(column);
            return new Ready(
                    column,
                    table,
                    StrandEvidence.expected(table, Rates.shipped()),
                    Load.of(List.of(table), Effort.of(column).seconds()));
        }
    }

    private final Exercises exercises;
    private final Map<Exercise, List<Ready>> pools = new HashMap<>();
    private final List<Ready> exam;
    private final Need need;
    private final double budget;
    private final double rate;
    private final Learning believed;

    /// @param rate how much fewer slips become each time a move is met
    /// @param believed what the planner takes it for
    PlanTrial(double rate, Learning believed) {
        this.rate = rate;
        this.believed = believed;
        Ladder ladder = Ladders.ladder("abacus-one-sheet").orElseThrow();
        Grade grade = ladder.grade("4").orElseThrow();
        Grade columns =
                new Grade(
                        grade.id(),
                        grade.name(),
                        List.of(grade.section("columns").orElseThrow()),
                        grade.time(),
                        grade.pass(),
                        grade.numbering(),
                        grade.writing(),
                        Optional.empty(),
                        grade.cites());
        EventTables tables = new EventTables();
        this.exercises = Exercises.of(ladder.id(), columns, tables);
        for (Exercise exercise : exercises.all()) {
            pools.put(
                    exercise,
                    exercises.problems(exercise, POOL, 5, Set.of()).stream()
                            .map(problem -> Ready.of((Column) problem, tables))
                            .toList());
        }
        Exercise asInExam = exercises.all().getFirst();
        this.exam = pools.getOrDefault(asInExam, List.of());
        this.need = new Need("columns", asInExam.load(), 1);
        this.budget = LESSONS * LESSON * asInExam.load().seconds();
    }

    /// What one pupil gains.
    record Gain(double before, double points) {}

    /// A pupil, and what was answered before the lessons: as in the exam, without learning from it.
    @SuppressWarnings("ArrayRecordComponent") // reckoned with, never compared
    record Pupil(double[] factors, List<MasteryAnswer> before, List<Load> loads) {}

    /// The pupil of that seed, of whom so many answers are known.
    Pupil pupil(long seed, int known) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] factors = pupil(random);
        List<MasteryAnswer> before = new ArrayList<>();
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i < known; i++) {
            Ready ready = exam.get(random.nextInt(exam.size()));
            MasteryAnswer.of(ready.table(), attempt(ready, factors, random)).ifPresent(before::add);
            loads.add(ready.load());
        }
        return new Pupil(factors, before, loads);
    }

    Gain work(Way way, Pupil pupil, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] factors = pupil.factors().clone();
        double before = score(factors);
        MasteryTally tally = new MasteryTally(Manner.FRAME);
        pupil.before().forEach(tally::add);
        Practised practised = new Practised();
        pupil.loads().forEach(practised::addWithoutLearning);
        double[] wrong = new double[Move.values().length];
        double[] met = new double[Move.values().length];
        double left = budget;
        for (int lesson = 0; left > 0; lesson++) {
            List<Exercise> chosen =
                    choose(way, lesson, factors, lacks(tally, practised), wrong, met, seed);
            for (Exercise exercise : chosen) {
                List<Ready> pool = pools.getOrDefault(exercise, exam);
                Ready ready = pool.get(random.nextInt(pool.size()));
                left -= ready.load().seconds();
                if (left <= 0) {
                    break;
                }
                practised.add(ready.load());
                boolean right = answer(ready, factors, tally, random);
                for (Move move : Move.values()) {
                    int index = new Strand.OfMove(move).index();
                    met[index] += ready.table().steps(move);
                    wrong[index] += right ? 0 : ready.table().steps(move);
                }
                for (int strand = 0; strand < Strand.COUNT; strand++) {
                    factors[strand] *= Math.exp(-rate * ready.load().times().get(strand));
                }
            }
        }
        return new Gain(before, score(factors) - before);
    }

    private static double[] pupil(SplittableRandom random) {
        double shared = SHARED * random.nextGaussian();
        double[] factors = new double[Load.SIZE];
        Arrays.fill(factors, Math.exp(shared));
        for (Move move : Move.values()) {
            factors[new Strand.OfMove(move).index()] =
                    Math.exp(shared + OWN * random.nextGaussian());
        }
        return factors;
    }

    /// The points to be expected in the exam's columns.
    private double score(double[] factors) {
        double sum = 0;
        for (Ready one : exam) {
            double slips = 0;
            for (int strand = 0; strand < Strand.COUNT; strand++) {
                slips += one.expected()[strand] * factors[strand];
            }
            sum += POINTS * Math.exp(-slips) / exam.size();
        }
        return sum;
    }

    private static boolean answer(
            Ready ready, double[] factors, MasteryTally tally, SplittableRandom random) {
        Attempt attempt = attempt(ready, factors, random);
        MasteryAnswer.of(ready.table(), attempt).ifPresent(tally::add);
        return new BigDecimal(attempt.answer()).compareTo(ready.table().answer()) == 0;
    }

    private static Attempt attempt(Ready ready, double[] factors, SplittableRandom random) {
        Rates rates =
                Rates.shipped()
                        .with(kind -> {
                            double factor = factors[new Strand.OfKind(kind).index()];
                            return Math.min(0.9, Rates.shipped().of(kind) * factor);
                        });
        double shared = factors[new Strand.OfKind(SlipKind.ONE_BEAD).index()];
        for (Move move : Move.values()) {
            rates = rates.with(move, factors[new Strand.OfMove(move).index()] / shared);
        }
        List<Long> rows = ready.column().rows().stream().map(row -> row.longValueExact()).toList();
        OptionalLong written = ColumnPupil.writes(rows, Fate.by(rates, random, Habit.NONE));
        String answer = written.isPresent() ? Long.toString(written.getAsLong()) : "0";
        return Attempt.of(ready.column(), answer);
    }

    private List<Exercise> choose(
            Way way,
            int lesson,
            double[] truth,
            Lacks lacks,
            double[] wrong,
            double[] met,
            long seed) {
        double[] likeliest = lacks.likeliest();
        List<Exercise> fitting =
                exercises.fitting(way == Way.ORACLE ? truth : likeliest, Planner.RIGHT);
        List<Exercise> moves =
                fitting.stream().filter(one -> one.focus() instanceof Focus.OfMove).toList();

        return switch (way) {
            case EXAM_ONLY -> repeated(fitting.getFirst());
            case ROTATE ->
                    IntStream.range(0, LESSON)
                            .mapToObj(i -> moves.get((lesson * LESSON + i) % moves.size()))
                            .toList();
            case MOST_USED ->
                    repeated(
                            moves.stream()
                                    .max(Comparator.comparingDouble(PlanTrial.this::used))
                                    .orElseThrow());
            case BY_WRONG ->
                    lesson == 0
                            ? repeated(fitting.getFirst())
                            : repeated(
                                    moves.stream()
                                            .max(
                                                    Comparator.comparingDouble(one -> {
                                                        int index = index(one);
                                                        return wrong[index] / (1 + met[index]);
                                                    }))
                                            .orElseThrow());
            case LIKELIEST -> choice(1).of(fitting, LESSON, likeliest::clone);
            case OURS -> choice(1).of(fitting, LESSON, lacks.pupils(seed + lesson));
            case OURS_OF_EIGHT -> choice(8).of(fitting, LESSON, lacks.pupils(seed + lesson));
            case ORACLE -> choice(1).of(fitting, LESSON, truth::clone);
        };
    }

    private Choice choice(int pupilsEach) {
        return new Choice(List.of(need), believed, Choice.USUAL_EXAM_SHARE, pupilsEach);
    }

    private Lacks lacks(MasteryTally tally, Practised practised) {
        MasteryTally mind = new MasteryTally(Manner.MIND);
        return Lacks.of(
                tally.told(MasteryPopulation.shipped(), Demand.of(tally)).posterior(),
                mind.told(MasteryPopulation.shipped(), Demand.of(mind)).posterior(),
                practised,
                believed);
    }

    private static List<Exercise> repeated(Exercise exercise) {
        List<Exercise> repeated = new ArrayList<>();
        for (int i = 0; i < LESSON; i++) {
            repeated.add(exercise);
        }
        return repeated;
    }

    private double used(Exercise exercise) {
        return need.load().times().get(index(exercise));
    }

    private static int index(Exercise exercise) {
        return exercise.focus() instanceof Focus.OfMove(Move move)
                ? new Strand.OfMove(move).index()
                : 0;
    }
}
