package tamabako.desk.room.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import tamabako.desk.room.Contest;
import tamabako.desk.room.Expected;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Tally;
import tamabako.desk.room.live.Live;

/// A room as the teacher sees it.
///
/// @param id opaque
/// @param title what the class sees
/// @param code to join by
/// @param address where pupils join
/// @param phase where the round stands: `waiting`, `running`, `paused`, `ended`
/// @param round the title of the round
/// @param number which round it is, from 1
/// @param rounds how many there are
/// @param answers how many problems the round has
/// @param limit how long it takes, in milliseconds; -1 without a limit
/// @param worked how long it went on so far, in milliseconds
/// @param locked whether nobody may join any more
/// @param marksShown whether the projector shows right and wrong
/// @param seats who sits there, at most [#MOST_SHOWN]
/// @param seated how many sit there
/// @param done how many handed in
/// @param pupils who is expected
/// @param slips the slips that several made
/// @param turn the problem that is on, where they come one after another
public record RoomView(
        String id,
        String title,
        String code,
        JoinAddress address,
        String phase,
        String round,
        int number,
        int rounds,
        int answers,
        long limit,
        long worked,
        boolean locked,
        boolean marksShown,
        List<SeatRow> seats,
        long seated,
        long done,
        List<Expected> pupils,
        List<SlipGroup> slips,
        Optional<TurnView> turn) {

    /// More seats than these are counted only.
    static final int MOST_SHOWN = 200;

    public RoomView {
        seats = List.copyOf(seats);
        pupils = List.copyOf(pupils);
        slips = List.copyOf(slips);
    }

    static RoomView of(
            RoomState room,
            Live live,
            List<SlipGroup> slips,
            JoinAddress address,
            Locale language) {
        boolean isContest = room.current().activity().contest() != Contest.NONE;
        Set<Integer> standing =
                isContest
                        ? Tally.standing(room).seats().stream()
                                .map(Seat::number)
                                .collect(Collectors.toSet())
                        : Set.of();
        List<SeatRow> rows =
                room.seats()
                        .present()
                        .limit(MOST_SHOWN)
                        .map(seat ->
                                SeatRow.of(
                                        seat,
                                        live.isAway(room, seat.number()),
                                        !isContest || standing.contains(seat.number())))
                        .toList();
        OptionalLong limit = room.limit();
        return new RoomView(
                room.id(),
                room.setup().title(),
                room.code(),
                address,
                room.phase().word(),
                room.current().title(),
                room.round() + 1,
                room.setup().rounds().size(),
                room.current().activity().answers(),
                limit.orElse(-1),
                room.phase().worked(live.now()),
                room.locked(),
                room.marksShown(),
                rows,
                room.seats().present().count(),
                room.seats().present().filter(Seat::handedIn).count(),
                room.setup().pupils().stream().filter(one -> !one.equals(Expected.NOBODY)).toList(),
                slips,
                room.current().activity().inTurn()
                        ? Optional.of(TurnView.of(room, language))
                        : Optional.empty());
    }

    /// Whether the problems are called.
    public boolean isCalled() {
        return turn.filter(one -> one.activity().equals("called")).isPresent();
    }

    /// Whether the problems are shown.
    public boolean isShown() {
        return turn.filter(one -> one.activity().equals("shown")).isPresent();
    }

    /// Whether the round goes on or waits in a pause.
    public boolean isGoing() {
        return phase.equals("running") || phase.equals("paused");
    }

    /// The time left in whole minutes and seconds, such as `4:07`.
    public String minutesLeft() {
        long seconds = Math.max(0, limit - worked + 999) / 1_000;
        return "%d:%02d".formatted(seconds / 60, seconds % 60);
    }

    /// Whether a round follows.
    public boolean hasNext() {
        return number < rounds;
    }

    /// Whether the round is over.
    public boolean isEnded() {
        return phase.equals("ended");
    }
}
