package tamabako.desk.command;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import tamabako.voice.script.CallScript;
import tamabako.voice.sound.CallSound;
import tamabako.voice.sound.Pace;
import tamabako.voice.sound.Sounded;
import tamabako.voice.sound.Sounding;
import tamabako.voice.sound.Wave;
import tamabako.voice.words.VoiceWords;

/// The sound files that the command `call` writes.
///
/// @param target the file that is asked for, if one is
/// @param calls how many calls there are; of several each gets its name
record CallFile(CommandSpec spec, Optional<Path> target, Pace pace, int calls) {

    /// Writes the sound of `script`, if sound is asked for.
    ///
    /// @return whether nothing was wrong
    boolean write(CallScript script) throws IOException {
        if (target.isEmpty()) {
            return true;
        }
        PrintWriter err = spec.commandLine().getErr();
        VoiceWords words = VoiceWords.of(Locale.ENGLISH);
        return switch (Sounding.of(script, pace)) {
            case Sounded.Ready(Sounding sounding) -> {
                String told = words.say(script.language(), sounding.times());
                err.println("call %s: %s".formatted(script.id(), told));
                write(script, sounding.sound());
                yield true;
            }
            case Sounded.TooFast reason -> {
                err.println("call %s: %s".formatted(script.id(), words.say(reason)));
                yield false;
            }
            case Sounded.NoVoice _ -> {
                err.println("call %s: %s".formatted(script.id(), words.noVoice()));
                yield false;
            }
        };
    }

    private void write(CallScript script, CallSound sound) throws IOException {
        String wave = name(script);
        byte[] bytes = Wave.of(sound.samples());
        Target.write(wave, out -> out.write(bytes));
        ObjectNode times = JsonNodeFactory.instance.objectNode();
        times.put("id", script.id());
        times.put("opening", sound.times().opening());
        sound.rows().forEach(times.putArray("rows")::add);
        sound.ends().forEach(times.putArray("ends")::add);
        times.put("end", sound.times().end());
        byte[] json = (times + "\n").getBytes(StandardCharsets.UTF_8);
        Target.write(wave.replaceFirst("(\\.wav)?$", ".json"), out -> out.write(json));
    }

    private String name(CallScript script) {
        String asked = target.orElseThrow().toString();
        String own = "-" + script.id().replaceAll("[^A-Za-z0-9]", "_");
        return calls == 1 ? asked : asked.replaceFirst("(\\.wav)?$", own + ".wav");
    }
}
