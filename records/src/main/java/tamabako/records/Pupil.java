package tamabako.records;

import java.util.Locale;

/// A pupil: a given name or an alias is all that is asked.
///
/// @param id opaque
/// @param groupId the group that the pupil comes with
/// @param name given name or alias
/// @param language the language that the pupil reads
/// @param demo whether the pupil belongs to the demo class
public record Pupil(String id, String groupId, String name, Locale language, boolean demo) {}
