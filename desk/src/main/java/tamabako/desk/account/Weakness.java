package tamabako.desk.account;

/// Why a password cannot be taken.
enum Weakness {

    /// Fewer than [Strength#SHORTEST] signs.
    SHORT,

    /// More than [Strength#LONGEST] signs.
    LONG,

    /// Guessed in too few tries: a common password, a row of keys, the teacher's own name.
    GUESSABLE
}
