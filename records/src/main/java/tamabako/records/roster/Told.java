package tamabako.records.roster;

import java.util.Comparator;

/// Something to tell about one place of a roster.
public record Told(Place place, Remark remark) {

    /// As the places follow each other in the file.
    static final Comparator<Told> IN_ORDER =
            Comparator.<Told>comparingInt(told -> told.place().line())
                    .thenComparingInt(told -> told.place().column());
}
