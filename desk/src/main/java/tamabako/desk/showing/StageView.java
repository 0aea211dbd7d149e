package tamabako.desk.showing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import tamabako.desk.web.View;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.problems.marking.Written;

/// What the stage needs to know.
///
/// @param showing what is asked for
/// @param seats the classroom's screen and nearest seat, where it is shown there
/// @param problem the sum
/// @param sheet the sheet it stands on; empty where it is made on the spot
/// @param next the address that shows another one
/// @param back the address of the plan
/// @param answerFields the fields that tell the server which sum is answered, as in an address
public record StageView(
        Showing showing,
        Optional<Seats> seats,
        ShownProblem problem,
        String sheet,
        String next,
        String back,
        String answerFields) {

    private static final BigDecimal MILLIS = BigDecimal.valueOf(1000);

    /// No call has rows closer together, in seconds.
    private static final BigDecimal FASTEST_SPOKEN = new BigDecimal("0.3");

    /// The numbers, parted by blanks.
    public String numbers() {
        return String.join(" ", problem.rows());
    }

    /// The numbers with their commas, as they are read afterwards.
    public List<String> written() {
        return problem.column().rows().stream()
                .map(row -> Written.of(new Column("", List.of(row), Terms.PLAIN)).number())
                .toList();
    }

    /// The address that opens a room for such a showing.
    public String room() {
        return "/rooms?source="
                + URLEncoder.encode("showing:" + answerFields, StandardCharsets.UTF_8);
    }

    /// From one onset to the next, in milliseconds.
    public String period() {
        return Double.toString(showing.pace().period());
    }

    /// How long a number stays, in milliseconds.
    public String shown() {
        return Double.toString(showing.pace().shown());
    }

    public String look() {
        return showing.look().word();
    }

    /// In centimetres; empty where nobody told.
    public String screenWidth() {
        return seats.map(known -> Integer.toString(known.screenWidth())).orElse("");
    }

    /// In centimetres; empty where nobody told.
    public String nearest() {
        return seats.map(known -> Integer.toString(known.nearest())).orElse("");
    }

    /// The address of the caller's plan with the same numbers or the same kind of them, spoken at
    /// the same pace: the way for whoever is better off without the showing.
    public String spoken() {
        BigDecimal pace = seconds().max(FASTEST_SPOKEN);
        String numbers =
                sheet.isEmpty()
                        ? "from=made&least=%1$d&most=%1$d&rows=%2$d&minus=%3$d"
                                .formatted(showing.digits(), showing.rows(), showing.minus())
                        : "from=sheet&sheet=" + sheet;
        return "/call?" + numbers + "&pacing=s&method=mental&pace=" + pace.toPlainString();
    }

    private BigDecimal seconds() {
        return BigDecimal.valueOf(showing.pace().period())
                .divide(MILLIS, 2, RoundingMode.HALF_UP)
                .stripTrailingZeros();
    }

    /// How many digits, how many numbers, how fast.
    public String summary(View view) {
        String first =
                problem.number() > 0
                        ? view.say("showing.summary.of-sheet", problem.number(), problem.of())
                        : view.count("showing.summary.digits", showing.digits());
        return view.say(
                "showing.summary",
                first,
                view.count("showing.summary.numbers", problem.rows().size()),
                seconds().toPlainString());
    }
}
