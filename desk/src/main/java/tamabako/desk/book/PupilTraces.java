package tamabako.desk.book;

/// Whatever keeps something of pupils outside the class book, such as seats in a room that is open.
/// It is told when a pupil is erased, before the pupil leaves the book, and must let go of all of
/// it.
@FunctionalInterface
public interface PupilTraces {

    /// Lets go of everything of that pupil. Erasing again what is gone does nothing.
    void erase(String pupilId);
}
