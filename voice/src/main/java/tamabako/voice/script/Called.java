package tamabako.voice.script;

/// What came of asking for a call.
public sealed interface Called {

    /// The script.
    record Written(CallScript script) implements Called {}

    /// There is none.
    record Refused(Unsayable reason) implements Called {}
}
