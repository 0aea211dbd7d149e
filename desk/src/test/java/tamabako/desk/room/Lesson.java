package tamabako.desk.room;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import tamabako.desk.showing.Look;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.marking.WritingRules;
import tamabako.voice.script.CallWish;
import tamabako.voice.sound.Pace;

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

    private static List<Column> columns(int count) {
        return problems(count).stream().map(Column.class::cast).toList();
    }

    /// The same columns, called in English at 3 s a row.
    public static Round called(int count) {
        return called(count, Contest.STANDING);
    }

    public static Round called(int count, Contest contest) {
        Calling calling =
                new Calling(
                        Locale.forLanguageTag("en-US"),
                        CallWish.USUAL,
                        Collections.nCopies(count, new Pace.SecondsARow(3)),
                        contest);
        return new Round(
                "Called", "SHEET", new Activity.Called(columns(count), calling), Optional.empty());
    }

    /// The same columns, shown at two numbers a second.
    public static Round shown(int count, Activity.Screen screen) {
        return new Round(
                "Shown",
                "SHEET",
                new Activity.Shown(
                        columns(count),
                        new tamabako.desk.showing.Pace(500),
                        Look.FIGURES,
                        false,
                        screen),
                Optional.empty());
    }
}
