package tamabako.voice.number;

import java.util.List;

/// Says whole numbers in one language.
public sealed interface NumberWords permits SpellingRules, MyriadReading {

    /// The greatest number that is said: 18 digits.
    long GREATEST = 999_999_999_999_999_999L;

    /// Stands between the words where the voice takes a breath.
    String BREATH = ",";

    /// The words of `number`.
    ///
    /// @param number from 0 to [#GREATEST]
    /// @param wording in what way
    /// @param before whether what follows the number changes its last sound
    /// @throws IllegalArgumentException if the number is out of range, or this language has no such
    ///   wording
    List<String> say(long number, Wording wording, Meeting before);

    /// The words of `number` in full.
    default List<String> say(long number) {
        return say(number, Wording.FULL, Meeting.OPEN);
    }

    /// The figures one by one, as they are said behind a decimal point.
    List<String> figures(String digits);

    /// The ways in which this language says numbers.
    List<Wording> wordings();

    /// Refuses a number that is out of range.
    static void check(long number) {
        if (number < 0 || number > GREATEST) {
            throw new IllegalArgumentException("Cannot say %d: 0 to 18 digits.".formatted(number));
        }
    }
}
