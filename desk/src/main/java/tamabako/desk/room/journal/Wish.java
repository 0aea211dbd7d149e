package tamabako.desk.room.journal;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import tamabako.desk.room.RoomCommand;

/// Something that the journal is to do.
///
/// @param room the room it is about
/// @param command what is wished; empty where only the news of other programs are to be read
/// @param outcome told when it is kept
record Wish(OpenRoom room, Optional<RoomCommand> command, CompletableFuture<Outcome> outcome) {

    static Wish of(OpenRoom room, RoomCommand command) {
        return new Wish(room, Optional.of(command), new CompletableFuture<>());
    }

    static Wish news(OpenRoom room) {
        return new Wish(room, Optional.empty(), new CompletableFuture<>());
    }
}
