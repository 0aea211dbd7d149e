package tamabako.desk.showing;

import java.util.Optional;
import tamabako.records.Settings;

/// The large screen of the classroom and its nearest seat, asked once and kept in the class book.
///
/// @param screenWidth the width of the picture in centimetres
/// @param nearest from the nearest seat to the screen in centimetres
public record Seats(int screenWidth, int nearest) {

    static final int LEAST_WIDTH = 20;
    static final int MOST_WIDTH = 1000;
    static final int LEAST_DISTANCE = 30;
    static final int MOST_DISTANCE = 3000;

    private static final String NAME = "showing.seats";

    /// What was told, if anything was.
    public static Optional<Seats> kept(Settings settings) {
        return settings.find(NAME)
                .map(kept -> kept.split(" "))
                .map(parts -> new Seats(Integer.parseInt(parts[0]), Integer.parseInt(parts[1])));
    }

    void keep(Settings settings) {
        settings.keep(NAME, screenWidth + " " + nearest);
    }
}
