package tamabako.desk.work;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Words;
import tamabako.frame.FrameKind;
import tamabako.frame.Unworkable;
import tamabako.frame.words.StepWords;
import tamabako.problems.Unreadable;
import tamabako.problems.text.ProblemText;

/// The page that works any sum: what was asked, and the working or what is wrong with it.
///
/// @param asked the fields as they came
/// @param wrong what is wrong
/// @param player the working
public record WorkPage(Fields asked, Optional<Wrong> wrong, Optional<PlayerView> player) {

    /// Sums to begin with.
    public static final List<String> EXAMPLES =
            List.of("54 - 29 + 38", "0 - 95 + 118", "306 × 4", "1225 ÷ 35", "√729", "∛59319");

    /// What is wrong, how to mend it, and in which field.
    public record Wrong(String field, String message) {}

    static Reply answer(Request request) {
        WorkPage page = of(request.query(), request.words());
        int status = page.wrong.isEmpty() ? 200 : 422;
        return new Reply.Page(status, "work.jte", Map.of("page", page));
    }

    static WorkPage of(Fields asked, Words words) {
        if (asked.text("sum").isEmpty()) {
            return new WorkPage(asked, Optional.empty(), Optional.empty());
        }
        return switch (WorkQuery.way(asked)) {
            case WorkQuery.Read.Bad(String field, String written) ->
                    wrong(asked, field, words.say("work.wrong." + field, written));
            case WorkQuery.Read.Good(WorkWay way) -> work(asked, way, words.language());
        };
    }

    private static WorkPage work(Fields asked, WorkWay way, Locale language) {
        try {
            Worked worked = way.work(ProblemText.parse(asked.text("sum")));
            return new WorkPage(
                    asked, Optional.empty(), Optional.of(PlayerView.of(worked, language)));
        } catch (Unreadable unreadable) {
            return wrong(asked, "sum", unreadable.message(language));
        } catch (Unworkable unworkable) {
            return wrong(asked, "sum", StepWords.of(language).why(unworkable.reason()));
        }
    }

    private static WorkPage wrong(Fields asked, String field, String message) {
        return new WorkPage(asked, Optional.of(new Wrong(field, message)), Optional.empty());
    }

    /// The message for a field, if it is to blame.
    public Optional<String> wrong(String field) {
        return wrong.filter(found -> found.field().equals(field)).map(Wrong::message);
    }

    /// Whether anything but the sum was asked for, so that the choices are shown open.
    public boolean hasChoices() {
        return List.of("frame", "rods", "unit", "carry", "trial", "root", "places", "rounding")
                .stream()
                .anyMatch(field -> !usual(field, asked.text(field)));
    }

    private static boolean usual(String field, String value) {
        return value.isEmpty() || (field.equals("frame") && value.equals(kinds().getFirst()));
    }

    /// `sum` as it stands in an address.
    public static String inAddress(String sum) {
        return URLEncoder.encode(sum, StandardCharsets.UTF_8);
    }

    /// The words of the frame kinds.
    public static List<String> kinds() {
        return List.of(FrameKind.values()).stream()
                .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                .toList();
    }
}
