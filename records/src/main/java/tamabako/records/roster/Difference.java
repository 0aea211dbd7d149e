package tamabako.records.roster;

/// What a roster changes in one pupil.
///
/// @param field what is changed
/// @param before what the book says; blank for nothing
/// @param after what it will say
public record Difference(Field field, String before, String after) {}
