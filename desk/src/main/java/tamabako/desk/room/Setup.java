package tamabako.desk.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What a room was opened with; none of it changes as long as the room is open.
///
/// @param title what the class sees
/// @param rounds in their order, one at least
/// @param pupils who is expected, to be picked by name; none where everybody types an alias
/// @param aliases whether names that nobody expects may be typed
/// @param oneByOne whether pupils see one problem at a time
/// @param most how many seats there are, 1 to [#MOST_SEATS]
public record Setup(
        String title,
        List<Round> rounds,
        List<Expected> pupils,
        boolean aliases,
        boolean oneByOne,
        int most) {

    /// The most seats that a room can have.
    public static final int MOST_SEATS = 10_000;

    public Setup {
        rounds = List.copyOf(rounds);
        pupils = List.copyOf(pupils);
        if (rounds.isEmpty()) {
            throw new IllegalArgumentException("A room has one round at least.");
        }
        if (most < 1 || most > MOST_SEATS) {
            throw new IllegalArgumentException("A room has 1 to 10000 seats, not " + most + ".");
        }
    }

    /// The expected pupil of that identity, if there is one.
    public Optional<Expected> findPupil(String pupil) {
        return pupils.stream()
                .filter(one -> !pupil.isBlank() && one.pupil().equals(pupil))
                .findFirst();
    }

    /// The same setup, with nobody at that place among those who are expected.
    Setup without(int place) {
        List<Expected> others = new ArrayList<>(pupils);
        others.set(place, Expected.NOBODY);
        return new Setup(title, rounds, others, aliases, oneByOne, most);
    }
}
