package tamabako.desk.call;

import java.util.Map;
import tamabako.desk.web.Reply;
import tamabako.voice.sound.Sounded;
import tamabako.voice.sound.Sounding;
import tamabako.voice.sound.Wave;

/// The sound of a call as an answer.
final class SoundReply {

    private SoundReply() {}

    /// @param save whether the browser is to keep it as a file
    static Reply of(PlannedCall call, boolean save) {
        return switch (call.sound()) {
            case Sounded.Ready(Sounding sounding) ->
                    new Reply.Bytes(
                            200,
                            "audio/wav",
                            save
                                    ? Map.of(
                                            "Content-Disposition",
                                            "attachment; filename=\"call-%d.wav\""
                                                    .formatted(call.number()))
                                    : Map.of(),
                            Wave.of(sounding.sound().samples()));
            case Sounded.TooFast _, Sounded.NoVoice _ -> Reply.trouble(404, "nowhere");
        };
    }
}
