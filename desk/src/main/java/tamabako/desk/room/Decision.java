package tamabako.desk.room;

import java.util.List;

/// What comes of a wish.
public sealed interface Decision {

    /// What happens. Nothing, where it happened before.
    record Accepted(List<RoomEvent> events) implements Decision {
        public Accepted {
            events = List.copyOf(events);
        }
    }

    /// It does not happen.
    ///
    /// @param noted what is kept of the try
    record Refused(Refusal why, List<RoomEvent> noted) implements Decision {
        public Refused {
            noted = List.copyOf(noted);
        }
    }

    /// Happens.
    static Decision accept(RoomEvent... events) {
        return new Accepted(List.of(events));
    }

    /// Does not happen.
    static Decision refuse(Refusal why) {
        return new Refused(why, List.of());
    }

    /// What is to be applied and kept.
    default List<RoomEvent> events() {
        return switch (this) {
            case Accepted(var events) -> events;
            case Refused(_, var noted) -> noted;
        };
    }
}
