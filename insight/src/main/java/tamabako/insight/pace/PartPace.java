package tamabako.insight.pace;

/// How fast a pupil is in one part of the work.
///
/// @param part the part
/// @param times how many times as long as the middle pupil takes: the middle estimate
/// @param low it is above this with chance .95
/// @param high it is below this with chance .95
/// @param besideLow how many times as long as in the pupil's other work: above this with chance .95
/// @param besideHigh below this with chance .95
/// @param seconds the seconds of one step, where the part is a move that was met; else 0
/// @param steps how often it was met
/// @param told whether the pupil's own times tell of it, and not mainly pupils in general
public record PartPace(
        Part part,
        double times,
        double low,
        double high,
        double besideLow,
        double besideHigh,
        double seconds,
        int steps,
        boolean told) {}
