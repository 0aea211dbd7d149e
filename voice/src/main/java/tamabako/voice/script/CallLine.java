package tamabako.voice.script;

import java.util.List;
import tamabako.voice.number.NumberWords;

/// One breath of a caller.
///
/// @param shown as it is shown to whoever reads it, with figures: "minus 456"
/// @param words as it is said, word by word; [NumberWords#BREATH] where the voice rests
public record CallLine(String shown, List<String> words) {

    public CallLine {
        words = List.copyOf(words);
    }

    /// The words as text, such as "ninety-four, that's all".
    public String said() {
        return String.join(" ", words).replace(" " + NumberWords.BREATH, NumberWords.BREATH);
    }
}
