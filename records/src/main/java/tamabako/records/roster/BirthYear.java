package tamabako.records.roster;

import java.time.Year;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A year of birth as people write it: `2017`, `2017年`, `2017-05-04`, `4.5.2017`, `平成29年`, `H29`.
///
/// @param year the year
/// @param exact whether a month or a day was given, too, which is not kept
record BirthYear(Year year, boolean exact) {

    private static final int FIRST = 1900;

    private static final List<Pattern> WESTERN =
            List.of(
                    Pattern.compile("(?<year>\\d{4})(?: ?年)?(?: ?(?:生|生まれ))?"),
                    Pattern.compile("(?<year>\\d{4})(?<more> ?[-/.年] ?\\d{1,2}.*)"),
                    Pattern.compile("(?<more>\\d{1,2}[-/.] ?\\d{1,2}[-/.] ?)(?<year>\\d{4})"),
                    Pattern.compile("(?<year>(?:19|20)\\d{2})(?<more>\\d{4})"));

    private static final Pattern ERA =
            Pattern.compile(
                    "(?<era>明治|大正|昭和|平成|令和|[mtshr])\\.? ?(?<count>元|\\d{1,2})(?: ?年)?(?: ?(?:生|生まれ))?(?<more> ?[-/.]? ?\\d{1,2}.*)?");

    /// The year before the first one of each era.
    private static final Map<String, Integer> ERAS =
            Map.of(
                    "明治", 1867, "m", 1867, "大正", 1911, "t", 1911, "昭和", 1925, "s", 1925, "平成", 1988,
                    "h", 1988, "令和", 2018, "r", 2018);

    static Optional<BirthYear> parse(String written, Year thisYear) {
        for (Pattern pattern : WESTERN) {
            Matcher matcher = pattern.matcher(written);
            if (matcher.matches()) {
                boolean exact = pattern.namedGroups().containsKey("more");
                return of(Integer.parseInt(matcher.group("year")), exact, thisYear);
            }
        }
        Matcher era = ERA.matcher(written.toLowerCase(Locale.ROOT));
        if (!era.matches()) {
            return Optional.empty();
        }
        int count = era.group("count").equals("元") ? 1 : Integer.parseInt(era.group("count"));
        int before = ERAS.getOrDefault(era.group("era"), 0);
        return of(before + count, era.group("more") != null, thisYear);
    }

    private static Optional<BirthYear> of(int year, boolean exact, Year thisYear) {
        return year < FIRST || year > thisYear.getValue()
                ? Optional.empty()
                : Optional.of(new BirthYear(Year.of(year), exact));
    }
}
