package tamabako.insight.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.insight.plan.NextPractice.Item;
import tamabako.insight.plan.NextPractice.Reason;
import tamabako.insight.plan.NextPractice.Why;
import tamabako.insight.pooling.Manner;
import tamabako.insight.readiness.Help;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.SectionReadiness;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.Strand;
import tamabako.problems.Problem;

/// Plans what pupils practise next for one grade.
///
/// @param exercises what can be practised
/// @param learning how practice tells
public record Planner(Exercises exercises, Learning learning) {

    /// About so many problems are to go right: pupils learn best where most goes well. Source:
    /// Klinkenberg, Straatemeier and van der Maas (2011) worked with .75. Aiming at more costs
    /// practice, for shorter problems have fewer moves a minute.
    public static final double RIGHT = 0.75;

    /// Where the chance rises by less through all that helps, points are looked at instead.
    private static final double TOO_LITTLE = 0.01;

    /// Which part of the days to the exam lies between two reviews. Source: Cepeda and others
    /// (2008) found 20 to 40 % best for a week, and 5 to 10 % for a year; equal gaps do as well as
    /// growing ones (Latimier, Peyre and Ramus, 2021).
    private static final double GAP = 0.15;

    /// A planner for the exercises of a grade.
    public static Planner of(Exercises exercises) {
        return new Planner(exercises, Learning.USUAL);
    }

    /// What the pupil is to practise next; no problems where none can be made.
    ///
    /// @param lacks what the pupil lacks
    /// @param readiness how ready the pupil is for the grade
    public NextPractice plan(Lacks lacks, Readiness readiness, PlanWish wish) {
        double[] likeliest = lacks.likeliest();
        List<Need> needs = needs(readiness, likeliest);
        Set<String> unknown = unknown(readiness);
        List<Exercise> fitting = fitting(unknown, likeliest);
        if (fitting.isEmpty() || needs.isEmpty()) {
            return new NextPractice(List.of(), List.of(), List.of());
        }
        Choice choice = new Choice(needs, learning, Choice.USUAL_EXAM_SHARE, Choice.USUAL_PUPILS);
        List<Exercise> chosen = choice.of(fitting, wish.count(), lacks.pupils(wish.seed()));
        List<Item> items = made(chosen, wish);
        return new NextPractice(
                items,
                reasons(items, chosen, needs, unknown, likeliest),
                wish.daysToExam().isPresent() ? reviews(wish.daysToExam().getAsInt()) : List.of());
    }

    private static Set<String> unknown(Readiness readiness) {
        Set<String> unknown = new HashSet<>();
        for (SectionReadiness section : readiness.sections()) {
            if (!section.proof().isEnough()) {
                unknown.add(section.section().id());
            }
        }
        return unknown;
    }

    /// What may be practised: while too little is known of a section, only such sections as in the
    /// exam; after that all that fits.
    private List<Exercise> fitting(Set<String> unknown, double[] factors) {
        return exercises.fitting(factors, RIGHT).stream()
                .filter(one ->
                        unknown.isEmpty()
                                || (one.focus() instanceof Focus.AsInExam(String section)
                                        && unknown.contains(section)))
                .toList();
    }

    /// What matters: how much the chance rises when slips in a section become fewer, or the points
    /// where the chance hardly moves.
    private List<Need> needs(Readiness readiness, double[] factors) {
        Map<String, Double> byChance = new HashMap<>();
        double sum = 0;
        for (Help help : readiness.helps()) {
            if (help.way() == Help.Way.FEWER_SLIPS) {
                for (SectionReadiness section : readiness.sections()) {
                    if (section.field().equals(help.field())) {
                        byChance.put(section.section().id(), Math.max(0, help.gain()));
                        sum += Math.max(0, help.gain());
                    }
                }
            }
        }
        boolean moves = sum >= TOO_LITTLE;
        List<Need> needs = new ArrayList<>();
        for (SectionReadiness section : readiness.sections()) {
            String id = section.section().id();
            Optional<Load> load = exercises.load(id);
            if (load.isPresent()) {
                double slips = load.get().slips(factors);
                double points = section.section().fullMarks() * slips * Math.exp(-slips);
                needs.add(
                        new Need(id, load.get(), moves ? byChance.getOrDefault(id, 0.0) : points));
            }
        }
        return needs;
    }

    /// The problems, each focus made in one go so that no two are alike.
    private List<Item> made(List<Exercise> chosen, PlanWish wish) {
        Map<Exercise, List<Problem>> pools = new HashMap<>();
        Set<Problem> not = new HashSet<>(wish.avoided());
        for (Exercise exercise : chosen) {
            pools.computeIfAbsent(
                    exercise,
                    same -> {
                        long count = chosen.stream().filter(same::equals).count();
                        List<Problem> pool =
                                exercises.problems(same, (int) count, wish.seed(), not);
                        not.addAll(pool);
                        return new ArrayList<>(pool);
                    });
        }
        List<Item> items = new ArrayList<>();
        for (Exercise exercise : chosen) {
            List<Problem> pool = pools.getOrDefault(exercise, List.of());
            if (!pool.isEmpty()) {
                Problem next = pool.removeFirst();
                items.add(
                        new Item(
                                next.withId(Integer.toString(items.size() + 1)),
                                exercise.focus(),
                                exercise.section()));
            }
        }
        return items;
    }

    private static List<Reason> reasons(
            List<Item> items,
            List<Exercise> chosen,
            List<Need> needs,
            Set<String> unknown,
            double[] factors) {
        List<Reason> reasons = new ArrayList<>();
        for (Exercise exercise : new LinkedHashSet<>(chosen)) {
            int count =
                    (int)
                            items.stream()
                                    .filter(item ->
                                            item.focus().equals(exercise.focus())
                                                    && item.section().equals(exercise.section()))
                                    .count();
            if (count > 0) {
                reasons.add(
                        new Reason(
                                exercise.focus(),
                                count,
                                why(exercise, unknown),
                                exercise.section(),
                                share(exercise, needs, factors),
                                exercise.load().right(factors)));
            }
        }
        reasons.sort(Comparator.comparingInt(Reason::problems).reversed());
        return reasons;
    }

    private static Why why(Exercise exercise, Set<String> unknown) {
        return !exercise.focus().isAsInExam()
                ? Why.COSTS_MOST
                : unknown.contains(exercise.section()) ? Why.TO_FIND_OUT : Why.AS_IN_EXAM;
    }

    /// Which part of the slips of its section comes from what an exercise is for.
    private static double share(Exercise exercise, List<Need> needs, double[] factors) {
        Optional<Strand> strand = strand(exercise.focus());
        double all = 0;
        double part = 0;
        for (Need need : needs) {
            if (strand.isPresent() && need.section().equals(exercise.section())) {
                int index = Load.from(Manner.FRAME) + strand.get().index();
                all += need.load().slips(factors);
                part += need.load().expected().get(index) * factors[index];
            }
        }
        return all == 0 ? 0 : part / all;
    }

    private static Optional<Strand> strand(Focus focus) {
        return switch (focus) {
            case Focus.AsInExam _ -> Optional.empty();
            case Focus.OfMove(Move move) -> Optional.of(new Strand.OfMove(move));
            case Focus.OfKind(SlipKind kind) -> Optional.of(new Strand.OfKind(kind));
        };
    }

    /// Days from now at equal gaps.
    private static List<Integer> reviews(int daysToExam) {
        int gap = Math.max(1, (int) Math.round(GAP * daysToExam));
        List<Integer> days = new ArrayList<>();
        for (int day = gap; day < daysToExam; day += gap) {
            days.add(day);
        }
        return days;
    }
}
