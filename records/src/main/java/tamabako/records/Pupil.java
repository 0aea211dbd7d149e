package tamabako.records;

import java.util.Comparator;
import java.util.Locale;

/// A pupil: a given name or an alias is all that is asked.
///
/// @param id opaque
/// @param groupId the group that the pupil comes with
/// @param name given name or alias
/// @param language the language that the pupil reads
/// @param about what else the teacher chose to write down
/// @param preferences how practice is shown to the pupil
/// @param demo whether the pupil belongs to the demo class
public record Pupil(
        String id,
        String groupId,
        String name,
        Locale language,
        About about,
        Preferences preferences,
        boolean demo) {

    /// By reading where there is one, else by name.
    public static final Comparator<Pupil> BY_NAME =
            Comparator.<Pupil, String>comparing(pupil ->
                            pupil.about().kana().isEmpty() ? pupil.name() : pupil.about().kana())
                    .thenComparing(Pupil::name)
                    .thenComparing(Pupil::id);

    /// A pupil of whom no more is known.
    public Pupil(String id, String groupId, String name, Locale language, boolean demo) {
        this(id, groupId, name, language, About.NOTHING, Preferences.USUAL, demo);
    }

    /// The same pupil in another group.
    public Pupil inGroup(String group) {
        return new Pupil(id, group, name, language, about, preferences, demo);
    }
}
