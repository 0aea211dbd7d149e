package tamabako.records.roster;

import java.util.ArrayList;
import java.util.List;
import tamabako.records.Pupil;

/// What a roster has to say of a pupil, column by column.
final class Facts {

    /// The columns of a roster that is written, in their order.
    static final List<Field> COLUMNS =
            List.of(
                    Field.GROUP,
                    Field.NAME,
                    Field.READING,
                    Field.GRADE,
                    Field.BORN,
                    Field.LANGUAGE,
                    Field.ROSTER_ID,
                    Field.NO_FLASHING,
                    Field.EXTRA_TIME,
                    Field.PACE);

    private Facts() {}

    /// What stands in that column for a pupil, in the letters that every program reads.
    static String of(Field field, Pupil pupil, String group) {
        return switch (field) {
            case GROUP -> group;
            case NAME -> pupil.name();
            case READING -> pupil.about().kana();
            case GRADE -> pupil.about().grade();
            case BORN -> pupil.about().born().map(Object::toString).orElse("");
            case LANGUAGE -> pupil.language().toLanguageTag();
            case ROSTER_ID -> pupil.about().rosterId();
            case NO_FLASHING -> pupil.preferences().noFlashing() ? "yes" : "no";
            case EXTRA_TIME -> Integer.toString(pupil.preferences().extraTime());
            case PACE -> Integer.toString(pupil.preferences().pace());
            case FAMILY_NAME, GIVEN_NAME, FAMILY_READING, GIVEN_READING -> "";
        };
    }

    /// What is not the same about a pupil before and after.
    static List<Difference> differences(
            Pupil before, String groupBefore, Pupil after, String groupAfter) {
        List<Difference> differences = new ArrayList<>();
        for (Field field : COLUMNS) {
            String was = of(field, before, groupBefore);
            String is = of(field, after, groupAfter);
            if (!was.equals(is)) {
                differences.add(new Difference(field, was, is));
            }
        }
        return differences;
    }
}
