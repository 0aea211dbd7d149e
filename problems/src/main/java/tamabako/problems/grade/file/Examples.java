package tamabako.problems.grade.file;

import java.util.Map;

/// How each key could be written.
final class Examples {

    private static final Map<String, String> WRITTEN =
            Map.ofEntries(
                    Map.entry("ladder", "ladder: our-grades"),
                    Map.entry("name", "name: {en: Grade 3, ja: 3級}"),
                    Map.entry("about", "about: {en: For our own tests., ja: 教室内のテスト用。}"),
                    Map.entry("sources", "sources: {ours: {name: our choice, confirmed: no}}"),
                    Map.entry("confirmed", "confirmed: no"),
                    Map.entry("grades", "grades: [{grade: \"3\", name: Grade 3, ...}]"),
                    Map.entry("grade", "grade: \"3\""),
                    Map.entry("time", "time: 30 min"),
                    Map.entry("pass", "pass: {points: 240}"),
                    Map.entry("points", "points: 10"),
                    Map.entry("points in each", "points in each: 100"),
                    Map.entry("right in each", "right in each: 8"),
                    Map.entry("ranks", "ranks: [{rank: dan-1, name: 1 dan, points: 100}]"),
                    Map.entry("rank", "rank: dan-1"),
                    Map.entry("scored by", "scored by: lowest section"),
                    Map.entry("elective", "elective: {choose: 2, of: [slip-pad, mental, stories]}"),
                    Map.entry("choose", "choose: 2"),
                    Map.entry("of", "of: [slip-pad, mental, stories]"),
                    Map.entry("from", "from: {ours: [points, time]}"),
                    Map.entry("sections", "sections: [{section: columns, ...}]"),
                    Map.entry("section", "section: columns"),
                    Map.entry("problems", "problems: [{count: 10, kind: columns, ...}]"),
                    Map.entry("count", "count: 10"),
                    Map.entry("kind", "kind: columns"),
                    Map.entry("rows", "rows: 10"),
                    Map.entry("digits", "digits: 3"),
                    Map.entry("lengths", "lengths: {3: 4, 2: 3}"),
                    Map.entry("mixed", "mixed: {first half: 2, second half: 2}"),
                    Map.entry("minus rows", "minus rows: 3-4"),
                    Map.entry("below zero", "below zero: {second half: 1}"),
                    Map.entry("techniques", "techniques: [direct, five-complement]"),
                    Map.entry("each has", "each has: [five-complement]"),
                    Map.entry("in taking", "in taking: yes"),
                    Map.entry("multiplicand", "multiplicand: 3-5"),
                    Map.entry("multiplier", "multiplier: 2-4"),
                    Map.entry("divisor", "divisor: 2-4"),
                    Map.entry("quotient", "quotient: 2-4"),
                    Map.entry("places", "places: 3"),
                    Map.entry("degree", "degree: 2"),
                    Map.entry("leaves", "leaves: 8"),
                    Map.entry("pad leaves", "pad leaves: 20"),
                    Map.entry("lines", "lines: 5"),
                    Map.entry("level", "level: \"3\""));

    private Examples() {}

    /// The key with a value that it may have.
    static String of(String key) {
        return WRITTEN.getOrDefault(key, key + ": ...");
    }
}
