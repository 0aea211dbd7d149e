package tamabako.desk.room;

/// A pupil of the group that a room was opened for, to be picked by name.
///
/// @param pupil the identity in the class book
/// @param name as the class sees it
/// @param language the tag of the language that the pupil reads
/// @param extraTime how much longer than the others the pupil may take, per cent
/// @param pin the figures to be typed with the name; blank where the name is enough
/// @param calm whether numbers come slowly on the pupil's tablet
public record Expected(
        String pupil, String name, String language, int extraTime, String pin, boolean calm) {

    /// The place of a pupil who was erased.
    public static final Expected NOBODY = new Expected("", "", "", 0, "", false);
}
