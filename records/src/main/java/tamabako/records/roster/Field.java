package tamabako.records.roster;

import tamabako.problems.words.Sayable;

/// What a column of a roster tells of a pupil. [RosterWords] has its name as a heading; the file
/// `columns.properties` has every heading under which it is found.
public enum Field implements Sayable {
    NAME,
    FAMILY_NAME,
    GIVEN_NAME,
    READING,
    FAMILY_READING,
    GIVEN_READING,
    GROUP,
    GRADE,
    BORN,
    LANGUAGE,
    ROSTER_ID,
    NO_FLASHING,
    EXTRA_TIME,
    PACE;

    @Override
    public String topic() {
        return "field";
    }
}
