package tamabako.desk.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tamabako.insight.slip.Move;

/// The examples by which the families' report explains the moves of the hand are examples of these
/// very moves.
class ReportWordsTest {

    private static final Pattern SUM = Pattern.compile("(\\d+) ?([+-]|＋|－) ?(\\d+)");

    static Stream<Arguments> moves() {
        return Stream.of("en", "ja")
                .flatMap(language ->
                        Arrays.stream(Move.values()).map(move -> Arguments.of(language, move)));
    }

    @ParameterizedTest
    @MethodSource("moves")
    void theExampleOfAMoveIsWorkedByThatMove(String language, Move move) {
        String said =
                ResourceBundle.getBundle("words.progress_" + language, Locale.ROOT)
                        .getString("family.move." + move.word());
        Matcher sum = SUM.matcher(said);
        assertThat(sum.find()).isTrue();
        boolean adding = List.of("+", "＋").contains(sum.group(2));
        int first = Integer.parseInt(sum.group(1));
        int second = Integer.parseInt(sum.group(3));
        if (move == Move.CARRY_RUNS_ON) {
            assertThat(first).isBetween(91, 99);
            assertThat(first % 10 + second).isGreaterThanOrEqualTo(10);
        } else {
            assertThat(Move.of(first % 10, adding ? second : -second)).isEqualTo(move);
        }
    }
}
