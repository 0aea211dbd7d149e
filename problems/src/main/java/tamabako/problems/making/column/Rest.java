package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tamabako.problems.making.draw.Draws;

/// What one digit, and after it the others, can take of the places that are left.
final class Rest {

    static final Rest FULL = end(BigInteger.ONE);
    static final Rest NEVER = end(BigInteger.ZERO);

    private final int from;
    private final Choice choice;
    private final Rest[] then;

    /// Of two digits at once, which is quicker; made when it is first needed.
    private @Nullable Two two;

    /// @param from how many places the digit takes with the first choice, one more with the next
    /// @param choice by the ways to go on
    /// @param then what is left after each choice
    Rest(int from, Choice choice, List<Rest> then) {
        this.from = from;
        this.choice = choice;
        this.then = then.toArray(Rest[]::new);
    }

    private static Rest end(BigInteger ways) {
        return new Rest(0, Choice.of(List.of(ways)), List.of());
    }

    /// In how many ways the places can be filled.
    BigInteger ways() {
        return choice.all();
    }

    /// Draws how many places each of two digits takes; what is left then.
    Rest draw(Draws draws, int digit, int next, int[] taken) {
        Two pair = two;
        if (pair == null) {
            pair = Two.of(this);
            two = pair;
        }
        int drawn = pair.choice.draw(draws);
        taken[digit] = pair.first[drawn];
        taken[next] = pair.second[drawn];
        return pair.then[drawn];
    }

    private record Two(Choice choice, int[] first, int[] second, Rest[] then) {

        static Two of(Rest rest) {
            List<BigInteger> ways = new ArrayList<>();
            List<int[]> taken = new ArrayList<>();
            List<Rest> then = new ArrayList<>();
            for (int i = 0; i < rest.then.length; i++) {
                Rest next = rest.then[i];
                for (int j = 0; j < next.then.length; j++) {
                    if (next.choice.count(j).signum() > 0) {
                        ways.add(
                                rest.choice
                                        .count(i)
                                        .multiply(next.choice.count(j))
                                        .divide(next.ways()));
                        taken.add(new int[] {rest.from + i, next.from + j});
                        then.add(next.then[j]);
                    }
                }
            }
            return new Two(
                    Choice.of(ways),
                    taken.stream().mapToInt(two -> two[0]).toArray(),
                    taken.stream().mapToInt(two -> two[1]).toArray(),
                    then.toArray(Rest[]::new));
        }
    }
}
