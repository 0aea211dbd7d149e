package tamabako.desk.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.desk.web.Words;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.words.ProblemWords;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;
import tamabako.voice.script.CallScript;
import tamabako.voice.script.Called;
import tamabako.voice.script.Caller;
import tamabako.voice.script.Unsayable;
import tamabako.voice.sound.Pace;
import tamabako.voice.words.VoiceWords;

/// Turns what a form asks for into calls; what cannot be called is told beside the fields.
final class Planning {

    private final ClassBook book;
    private final CallForm asked;
    private final Words words;
    private final List<PlannedCall> calls = new ArrayList<>();

    Planning(ClassBook book, CallForm asked, Words words) {
        this.book = book;
        this.asked = asked;
        this.words = words;
    }

    /// The calls that the form asks for; none where it has faults, old or new.
    List<PlannedCall> calls(long seed) {
        Pace pace = asked.pace(words.say("call.wrong.pace"));
        asked.words();
        asked.wish();
        asked.round();
        asked.method();
        switch (asked.source()) {
            case "sheet" -> fromSheet(pace);
            case "climb" -> climb(seed);
            default -> made(asked.count(), asked.leastDigits(), asked.mostDigits(), seed, pace);
        }
        return asked.form().isGood() ? List.copyOf(calls) : List.of();
    }

    private void fromSheet(Pace pace) {
        Optional<KeptSheet> kept = book.sheets().find(asked.form().text("sheet"));
        if (kept.isEmpty()) {
            asked.form().blame("sheet", words.say("call.wrong.sheet"));
            return;
        }
        for (Problem problem : kept.get().sheet().problems()) {
            if (problem instanceof Column column) {
                add(column, pace);
            }
        }
        if (calls.isEmpty()) {
            asked.form().blame("sheet", words.say("call.wrong.columns"));
        }
    }

    private void climb(long seed) {
        for (Level level : Level.CLIMB) {
            Pace pace = new Pace.SecondsARow(level.seconds());
            made(1, level.least(), level.most(), seed + level.most(), pace);
        }
    }

    private void made(int count, int least, int most, long seed, Pace pace) {
        int rows = asked.rows();
        ColumnWish wish =
                ColumnWish.of(rows, 1).withDigits(least, most).withMinusRows(asked.minusRows());
        switch (Maker.make(wish, count, seed)) {
            case Made.Found(List<Problem> problems, _) ->
                    problems.forEach(problem -> add((Column) problem, pace));
            case Made.Impossible(_, Made.Reason reason, _) -> blame(reason);
            case Made.NotFound(_, Made.Reason reason) -> blame(reason);
        }
    }

    private void blame(Made.Reason reason) {
        asked.form().blame("whole", ProblemWords.of(words.language()).say(reason));
    }

    private void add(Column column, Pace pace) {
        switch (Caller.call(column, asked.words(), asked.wish())) {
            case Called.Written(CallScript script) ->
                    calls.add(
                            new PlannedCall(
                                    calls.size() + 1,
                                    column,
                                    PlannedCall.digits(column),
                                    script,
                                    pace));
            case Called.Refused(Unsayable reason) ->
                    asked.form()
                            .blame(
                                    "whole",
                                    words.say(
                                            "call.wrong.column",
                                            column.id(),
                                            VoiceWords.of(words.language()).say(reason)));
        }
    }
}
