package tamabako.voice.script;

import java.util.Optional;
import tamabako.voice.number.Wording;

/// How a column is to be called.
///
/// @param wording in what way numbers are said
/// @param unit the unit of all amounts, as an ISO 4217 code, or `none` for plain numbers; empty for
///   that of the problem, or else the usual one of the language
/// @param clearing whether the opening calls for the frame to be cleared (go-hasan)
public record CallWish(Wording wording, Optional<String> unit, boolean clearing) {

    /// Numbers in full, in the problem's own unit.
    public static final CallWish USUAL = new CallWish(Wording.FULL, Optional.empty(), false);

    public CallWish with(Wording changed) {
        return new CallWish(changed, unit, clearing);
    }

    public CallWish withUnit(String changed) {
        return new CallWish(wording, Optional.of(changed), clearing);
    }

    public CallWish withClearing(boolean changed) {
        return new CallWish(wording, unit, changed);
    }
}
