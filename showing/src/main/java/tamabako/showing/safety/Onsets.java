package tamabako.showing.safety;

/// The beginnings of the flashes of a showing: the changes that go the way of the first one.
///
/// @param shortest the shortest time between two of them in milliseconds, infinite where there are
///   not two
/// @param alternate whether there is one change back, at most, between each two of them
record Onsets(double shortest, boolean alternate) {

    static Onsets of(Changes changes) {
        double shortest = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        int back = 0;
        boolean alternate = true;
        int way = 0;
        for (int k = 1; k < changes.pictures(); k++) {
            if (way == 0) {
                way = changes.lighter(k) ? 1 : changes.darker(k) ? -1 : 0;
            }
            if (way > 0 ? changes.darker(k) : way < 0 && changes.lighter(k)) {
                alternate &= ++back <= 1;
            }
            if (way > 0 ? changes.lighter(k) : way < 0 && changes.darker(k)) {
                shortest = Math.min(shortest, changes.time(k) - last);
                last = changes.time(k);
                back = 0;
            }
        }
        return new Onsets(shortest, alternate);
    }
}
