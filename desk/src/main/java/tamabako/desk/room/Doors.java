package tamabako.desk.room;

/// Whether a room is open. Moments are milliseconds of the epoch, by the desk's clock.
public sealed interface Doors {

    /// The class works here.
    record Open() implements Doors {}

    /// Nobody works here any more, but answers that are still on a tablet may come, and the teacher
    /// may let in those that came late.
    record Closed(long at) implements Doors {}

    /// Nothing is left of it.
    record Gone() implements Doors {}
}
