package tamabako.desk.room.page;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import tamabako.desk.room.Expected;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;

/// The names to pick from.
///
/// @param code the code of the room
/// @param title what the class sees
/// @param choices every expected pupil
/// @param aliases whether a name can be typed
/// @param pins whether figures have to be typed with the name
/// @param fault the key of what was wrong; blank for nothing
public record NamesView(
        String code,
        String title,
        List<Choice> choices,
        boolean aliases,
        boolean pins,
        String fault) {

    public NamesView {
        choices = List.copyOf(choices);
    }

    /// One name, and whether somebody sits under it.
    public record Choice(String pupil, String name, boolean taken) {}

    static NamesView of(RoomState room, String fault) {
        Set<String> seated = room.seats().present().map(Seat::pupil).collect(Collectors.toSet());
        List<Choice> choices =
                room.setup().pupils().stream()
                        .filter(one -> !one.equals(Expected.NOBODY))
                        .map(one ->
                                new Choice(one.pupil(), one.name(), seated.contains(one.pupil())))
                        .toList();
        boolean pins = room.setup().pupils().stream().anyMatch(one -> !one.pin().isEmpty());
        return new NamesView(
                room.code(), room.setup().title(), choices, room.setup().aliases(), pins, fault);
    }
}
