package tamabako.problems.making;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tamabako.frame.Technique;
import tamabako.problems.making.column.Condition;
import tamabako.problems.making.column.DigitCondition.DigitsEach;
import tamabako.problems.making.column.DigitCondition.LastDigits;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.column.HandCondition.CarryRun;
import tamabako.problems.making.column.HandCondition.OnlyTechniques;
import tamabako.problems.making.column.HandCondition.Strokes;
import tamabako.problems.making.column.HandCondition.TechniqueCount;
import tamabako.problems.making.column.Search;
import tamabako.problems.making.column.TotalCondition;
import tamabako.problems.making.column.TotalCondition.AnswerLength;
import tamabako.problems.words.Sayable;

/// Looks for a wish that can be granted close to one that cannot.
final class Nearby {

    /// How far each way of asking for less is followed.
    private static final int STEPS = 8;

    private Nearby() {}

    /// The nearest to `wish`, of which `clash` do not go together: a little less of one of them, or
    /// a minus row or a row more or less; then still less; then without one of them; then without
    /// all.
    static Optional<Wish> to(ColumnWish wish, List<Sayable> clash) {
        List<Condition> conditions =
                clash.stream()
                        .filter(Condition.class::isInstance)
                        .map(Condition.class::cast)
                        .toList();
        return Stream.of(
                        IntStream.rangeClosed(1, STEPS)
                                .boxed()
                                .flatMap(by -> lessBy(wish, conditions, by)),
                        conditions.stream().filter(Nearby::isOfHandOrDigits).map(wish::without),
                        conditions.stream()
                                .filter(one -> !isOfHandOrDigits(one))
                                .map(wish::without),
                        Stream.of(
                                without(wish, conditions.stream().filter(Nearby::isOfHandOrDigits)),
                                without(wish, conditions.stream()),
                                without(wish, wish.conditions().stream())))
                .flatMap(wishes -> wishes)
                .filter(nearby -> Limits.broken(nearby, 1).isEmpty())
                .filter(near -> Search.finds(near.shape(), near.signs(), near.conditions()))
                .map(Wish.class::cast)
                .findFirst();
    }

    private static Stream<ColumnWish> lessBy(ColumnWish wish, List<Condition> conditions, int by) {
        int least = wish.signs().leastMinus();
        int most = wish.signs().mostMinus();
        return Stream.of(
                        Stream.of(
                                wish.withMinusRows(least + by, most + by),
                                wish.withMinusRows(least - by, most - by)),
                        conditions.stream().flatMap(one -> less(one, by)).map(wish::with),
                        Stream.of(wish.withRows(wish.rows() - by), wish.withRows(wish.rows() + by)),
                        conditions.stream().flatMap(one -> more(one, by)).map(wish::with))
                .flatMap(wishes -> wishes);
    }

    /// With one technique more, at the first step.
    private static Stream<Condition> more(Condition condition, int by) {
        if (by > 1 || !(condition instanceof OnlyTechniques(Set<Technique> techniques))) {
            return Stream.empty();
        }
        return EnumSet.allOf(Technique.class).stream()
                .filter(technique -> !techniques.contains(technique))
                .map(technique -> {
                    Set<Technique> more = EnumSet.of(technique);
                    more.addAll(techniques);
                    return new OnlyTechniques(more);
                });
    }

    /// Conditions in the place of `condition` that ask for less by so many steps.
    private static Stream<Condition> less(Condition condition, int by) {
        return switch (condition) {
            case TechniqueCount(Technique technique, int least, int most) when least > by ->
                    Stream.of(new TechniqueCount(technique, least - by, most));
            case TechniqueCount(Technique technique, int least, int most)
                    when most < HandCondition.ANY ->
                    Stream.of(new TechniqueCount(technique, least, most + by));
            case CarryRun(int least, int most) when least > by ->
                    Stream.of(new CarryRun(least - by, most));
            case CarryRun(int least, int most) when most < HandCondition.ANY ->
                    Stream.of(new CarryRun(least, most + by));
            case Strokes(int least, int most) ->
                    Stream.of(new Strokes(least - by * least / 20, most + by * most / 20));
            case DigitsEach(int least, int most) ->
                    Stream.of(new DigitsEach(Math.max(0, least - by), most + by));
            case LastDigits(int most) -> Stream.of(new LastDigits(most + by));
            case AnswerLength(int least, int most) ->
                    Stream.of(new AnswerLength(Math.max(1, least - by), most + by));
            default -> Stream.empty();
        };
    }

    private static boolean isOfHandOrDigits(Condition condition) {
        return !(condition instanceof TotalCondition);
    }

    private static ColumnWish without(ColumnWish wish, Stream<Condition> conditions) {
        return conditions.reduce(wish, ColumnWish::without, (_, less) -> less);
    }
}
