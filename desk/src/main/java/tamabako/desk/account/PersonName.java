package tamabako.desk.account;

import java.util.Optional;
import tamabako.desk.web.Words;

/// What a teacher may be called.
final class PersonName {

    private static final int LONGEST = 60;

    private PersonName() {}

    /// Why nobody can be called so, in the reader's words.
    static Optional<String> fault(String name, Words words) {
        if (name.isBlank()) {
            return Optional.of(words.say("name.none"));
        }
        return name.length() > LONGEST || name.codePoints().anyMatch(Character::isISOControl)
                ? Optional.of(words.say("name.long", LONGEST))
                : Optional.empty();
    }
}
