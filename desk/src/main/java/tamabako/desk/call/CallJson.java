package tamabako.desk.call;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import tamabako.desk.web.Words;
import tamabako.voice.script.CallLine;
import tamabako.voice.script.CallScript;
import tamabako.voice.sound.CallTimes;
import tamabako.voice.sound.Sounded;
import tamabako.voice.sound.Sounding;
import tamabako.voice.sound.Understanding;
import tamabako.voice.words.VoiceWords;

/// The calls of a plan as the page script reads them.
final class CallJson {

    /// What the page script says; the texts stand in `words/calls_xx.properties`.
    private static final List<String> SAID =
            List.of(
                    "ready",
                    "loading",
                    "calling",
                    "row",
                    "paused",
                    "over",
                    "no-sound",
                    "start",
                    "pause",
                    "go-on",
                    "which",
                    "digits",
                    "show-answer",
                    "hide-answer",
                    "hands.begin",
                    "hands.left",
                    "hands.places",
                    "hands.place",
                    "hands.one",
                    "hands.nobody",
                    "hands.right",
                    "hands.wrong");

    private final Words words;
    private final VoiceWords voice;
    private final String sound;

    /// @param sound the address of the sounds, to be followed by the number of a call
    CallJson(Words words, String sound) {
        this.words = words;
        this.voice = VoiceWords.of(words.language());
        this.sound = sound;
    }

    /// @param first which call is on when the page opens, from 0
    String of(List<PlannedCall> calls, String round, int first) {
        ObjectNode page = JsonNodeFactory.instance.objectNode();
        page.put("round", round);
        page.put("first", first);
        ArrayNode all = page.putArray("calls");
        calls.forEach(call -> all.add(json(call)));
        ObjectNode texts = page.putObject("words");
        SAID.forEach(key -> texts.put(key, words.say("call." + key)));
        return page.toString().replace("<", "\\u003c");
    }

    private ObjectNode json(PlannedCall call) {
        CallScript script = call.script();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("id", script.id());
        json.put("digits", call.digits());
        json.put("language", script.language().toLanguageTag());
        json.set("opening", json(script.opening()));
        ArrayNode rows = json.putArray("rows");
        script.rows().forEach(row -> rows.add(json(row)));
        json.put("answer", script.answer().shown());
        json.put("right", script.right().shown());
        switch (call.sound()) {
            case Sounded.Ready(Sounding sounding) -> {
                CallTimes times = sounding.times();
                json.put("sound", sound + call.number());
                json.put("told", voice.say(script.language(), times));
                json.put("verdict", verdict(script, times));
                put(json.putObject("times"), times);
            }
            case Sounded.TooFast reason -> silent(json, voice.say(reason), call, reason.least());
            case Sounded.NoVoice _ -> silent(json, voice.noVoice(), call, 3);
        }
        return json;
    }

    private static String verdict(CallScript script, CallTimes times) {
        double share = Understanding.share(script.language(), times.greatestHurry());
        return switch (Understanding.of(share)) {
            case CLEAR -> "clear";
            case HARD -> "hard";
            case LOST -> "lost";
        };
    }

    /// Without a voice the prompter still needs times: the rows follow at their pace.
    private static void silent(ObjectNode json, String told, PlannedCall call, double spoken) {
        json.put("told", told);
        json.put("verdict", "silent");
        double slot = call.pace().slot(call.digits(), spoken);
        double first = 2;
        ObjectNode times = json.putObject("times");
        times.put("opening", 0.3);
        ArrayNode rows = times.putArray("rows");
        int count = call.script().rows().size();
        for (int row = 0; row < count; row++) {
            rows.add(first + row * slot);
        }
        times.put("end", first + count * slot);
    }

    private static void put(ObjectNode json, CallTimes times) {
        json.put("opening", times.opening());
        times.rows().forEach(json.putArray("rows")::add);
        json.put("end", times.end());
    }

    private static ObjectNode json(CallLine line) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("shown", line.shown());
        json.put("said", line.said());
        return json;
    }
}
