package tamabako.desk.room;

import java.util.Optional;

/// Names as a class sees them.
public final class SeatName {

    /// The longest name, in letters.
    public static final int LONGEST = 24;

    private SeatName() {}

    /// The name as it is kept, with single blanks; empty where it cannot be used: nothing to see,
    /// too long, or with signs that nobody sees or that turn the direction of writing.
    public static Optional<String> clean(String typed) {
        String name = typed.strip().replaceAll("\\s+", " ");
        boolean isSeen =
                name.codePoints()
                        .noneMatch(letter ->
                                switch (Character.getType(letter)) {
                                    case Character.CONTROL,
                                            Character.FORMAT,
                                            Character.SURROGATE,
                                            Character.PRIVATE_USE,
                                            Character.UNASSIGNED,
                                            Character.LINE_SEPARATOR,
                                            Character.PARAGRAPH_SEPARATOR ->
                                            true;
                                    default -> false;
                                });
        int length = name.codePointCount(0, name.length());
        return isSeen && length >= 1 && length <= LONGEST ? Optional.of(name) : Optional.empty();
    }
}
