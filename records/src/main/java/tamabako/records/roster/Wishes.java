package tamabako.records.roster;

import java.time.Year;
import java.util.Locale;

/// What a teacher says beside the roster.
///
/// @param group the group of those for whom the roster names none; blank for none
/// @param language the language of those for whom the roster names none
/// @param thisYear no one is born later
public record Wishes(String group, Locale language, Year thisYear) {}
