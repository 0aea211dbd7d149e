package tamabako.voice.script;

import java.util.List;
import java.util.Locale;

/// What a caller says for one column.
///
/// @param id the name of the problem on its sheet
/// @param language in which it is called
/// @param opening what is said before the first row, when the frame is cleared
/// @param rows one line for each row of the column
/// @param answer the right answer; without words where it is too long to be said
/// @param right what the caller says to a right answer
public record CallScript(
        String id,
        Locale language,
        CallLine opening,
        List<CallLine> rows,
        CallLine answer,
        CallLine right) {

    public CallScript {
        rows = List.copyOf(rows);
    }
}
