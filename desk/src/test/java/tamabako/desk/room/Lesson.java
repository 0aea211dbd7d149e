package tamabako.desk.room;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tamabako.problems.Problem;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.marking.WritingRules;

/// What tests open rooms with.
public final class Lesson {

    private Lesson() {}

    /// So many columns: the n-th is n + 40 + 5.
    public static List<Problem> problems(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(n ->
                        ProblemJson.parse(
                                "{\"id\":\"%d\",\"kind\":\"column\",\"rows\":[\"%d\",\"40\",\"5\"]}"
                                        .formatted(n, n)))
                .toList();
    }

    /// The right answer to problem `index` of these, from 0.
    public static String right(int index) {
        return String.valueOf(index + 46);
    }

    public static Round round(String sheet, int count, Optional<Duration> limit) {
        return new Round(
                "Round of " + count,
                sheet,
                new Activity.Written(problems(count), WritingRules.EASY),
                limit);
    }

    /// A room for typed names with these rounds.
    public static Setup setup(int most, Round... rounds) {
        return new Setup("Lesson", List.of(rounds), List.of(), true, false, most);
    }
}
