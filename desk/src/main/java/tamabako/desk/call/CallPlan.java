package tamabako.desk.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Verb;
import tamabako.desk.web.Words;
import tamabako.problems.Column;
import tamabako.records.ClassBook;
import tamabako.voice.script.CallWish;
import tamabako.voice.script.CallWords;
import tamabako.voice.script.Called;
import tamabako.voice.script.Caller;
import tamabako.voice.sound.Pace;

/// A plan of calls as a whole, for whoever takes it over, such as a room.
///
/// @param columns what is called, in its order
/// @param language the caller's
/// @param wish the caller's wording
/// @param paces how fast, for each column
/// @param round how pupils drop out: one of [CallForm#ROUNDS]
public record CallPlan(
        List<Column> columns, Locale language, CallWish wish, List<Pace> paces, String round) {

    public CallPlan {
        columns = List.copyOf(columns);
        paces = List.copyOf(paces);
    }

    /// Reads the address of a caller's page; empty where there is nothing that can be called.
    ///
    /// @param plan the fields of the address
    public static Optional<CallPlan> read(ClassBook book, Fields plan, Words words) {
        Request request =
                new Request(Verb.GET, "/call/stage", Map.of(), plan, Fields.NONE, words, "");
        String seed = plan.text("seed");
        CallForm asked = new CallForm(request);
        List<PlannedCall> calls =
                new Planning(book, asked, words)
                        .calls(seed.matches("\\d{1,6}") ? Long.parseLong(seed) : 1);
        return calls.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new CallPlan(
                                calls.stream().map(PlannedCall::column).toList(),
                                asked.words().language(),
                                asked.wish(),
                                calls.stream().map(PlannedCall::pace).toList(),
                                asked.round()));
    }

    /// The calls for the script of a caller's page.
    ///
    /// @param sound the address of the sounds, to be followed by the number of a call
    /// @param first which call is on when the page opens, from 0
    public String json(Words words, String sound, int first) {
        return new CallJson(words, sound).of(calls(), round, first);
    }

    /// The sound of a call.
    ///
    /// @param number from 1
    public Reply sound(int number, boolean save) {
        return number < 1 || number > columns.size()
                ? Reply.trouble(404, "nowhere")
                : SoundReply.of(call(number), save);
    }

    private List<PlannedCall> calls() {
        List<PlannedCall> calls = new ArrayList<>();
        for (int number = 1; number <= columns.size(); number++) {
            calls.add(call(number));
        }
        return calls;
    }

    /// What was planned once can be said again.
    private PlannedCall call(int number) {
        Column column = columns.get(number - 1);
        CallWords words = CallWords.find(language).orElseThrow();
        return switch (Caller.call(column, words, wish)) {
            case Called.Written(var script) ->
                    new PlannedCall(
                            number,
                            column,
                            PlannedCall.digits(column),
                            script,
                            paces.get(number - 1));
            case Called.Refused(var reason) ->
                    throw new IllegalStateException("Cannot be called: " + column + ", " + reason);
        };
    }
}
