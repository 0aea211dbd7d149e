package tamabako.desk.showing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Request;
import tamabako.desk.web.Words;
import tamabako.problems.HalfWidth;

/// Reads what is asked for out of a form or an address.
final class ShowingForm {

    /// The usual values: a first showing for beginners.
    private static final Map<String, String> USUAL =
            Map.of(
                    "digits", "1",
                    "rows", "5",
                    "minus", "0",
                    "seconds", "2",
                    "per", "each",
                    "look", "figures",
                    "size", "fit",
                    "place", "here");

    /// The fields that say what is shown; an address with them and a `seed` shows it again.
    static final Set<String> NAMES =
            Set.of(
                    "digits", "rows", "minus", "seconds", "per", "look", "size", "place", "sheet",
                    "number", "pupil");

    private static final double MILLIS = 1000;

    private final Form form;
    private final Words words;

    ShowingForm(Request request) {
        this.form = new Form(request, USUAL);
        this.words = request.words();
    }

    Form form() {
        return form;
    }

    /// The showing, if nothing is wrong with the form.
    Optional<Showing> read() {
        int digits = form.whole("digits", 1, Showing.MOST_DIGITS);
        int rows = form.whole("rows", Showing.LEAST_ROWS, Showing.MOST_ROWS);
        int minus = form.whole("minus", 0, rows / 2);
        boolean inAll = form.word("per", List.of("each", "all")).equals("all");
        Optional<Pace> pace = pace(inAll ? rows : 1);
        Look look = Look.of(form.word("look", Look.words()));
        boolean anySize = form.word("size", List.of("fit", "any")).equals("any");
        Place place = Place.of(form.word("place", Place.words()));
        if (anySize && pace.isPresent() && !pace.get().isSlowEnoughForAnySize()) {
            form.blame("size", words.say("showing.too-fast-for-any-size"));
        }
        return form.isGood()
                ? pace.map(at -> new Showing(digits, rows, minus, at, look, anySize, place))
                : Optional.empty();
    }

    private Optional<Pace> pace(int numbers) {
        String written = HalfWidth.of(form.text("seconds")).strip().replace(',', '.');
        if (written.matches("\\d{1,3}(\\.\\d{1,3})?")) {
            double period = new BigDecimal(written).doubleValue() * MILLIS / numbers;
            if (period >= Pace.FASTEST && period <= Pace.SLOWEST) {
                return Optional.of(new Pace(period));
            }
        }
        form.blame(
                "seconds",
                numbers == 1
                        ? words.say("showing.seconds-each")
                        : words.say(
                                "showing.seconds-all",
                                seconds(numbers * Pace.FASTEST),
                                seconds(numbers * Pace.SLOWEST)));
        return Optional.empty();
    }

    private static String seconds(double millis) {
        return BigDecimal.valueOf(millis / MILLIS).stripTrailingZeros().toPlainString();
    }
}
