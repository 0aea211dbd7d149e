package tamabako.records.roster;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/// One line of a roster: what is written in its cells, blank ones left out.
///
/// @param place the line
/// @param cells what is written, by what it tells
/// @param places where each cell stands
public record Entry(Place place, Map<Field, String> cells, Map<Field, Place> places) {

    public Entry {
        cells = Map.copyOf(cells);
        places = Map.copyOf(places);
    }

    /// An entry whose cells stand nowhere in particular.
    static Entry of(Place place, Map<Field, String> cells) {
        Map<Field, String> written = new EnumMap<>(Field.class);
        cells.forEach((field, cell) -> {
            if (!cell.isBlank()) {
                written.put(field, cell);
            }
        });
        return new Entry(place, written, Map.of());
    }

    Optional<String> cell(Field field) {
        return Optional.ofNullable(cells.get(field));
    }

    Place placeOf(Field field) {
        return places.getOrDefault(field, place);
    }
}
