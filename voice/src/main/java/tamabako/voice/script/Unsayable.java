package tamabako.voice.script;

import tamabako.voice.number.Wording;

/// Why a column cannot be called.
public sealed interface Unsayable {

    /// A row has more figures before the point than are called.
    record TooLong(int row, int digits, int most) implements Unsayable {}

    /// A row is finer than the smallest coin of its unit.
    record TooFine(int row, String unit, int places) implements Unsayable {}

    /// The language has no words for a unit.
    record UnknownUnit(String unit) implements Unsayable {}

    /// The language has no such wording.
    record NoSuchWording(Wording wording) implements Unsayable {}
}
