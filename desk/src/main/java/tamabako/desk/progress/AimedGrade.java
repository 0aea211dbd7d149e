package tamabako.desk.progress;

import java.text.Normalizer;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;

/// Finds the grade of a ladder that a teacher wrote down as worked towards: "8 kyu", "準２級", "Grade
/// 3".
final class AimedGrade {

    private static final Pattern KYU =
            Pattern.compile("(準|jun|semi|pre)?[- ]?(?:grade)? ?(\\d{1,2}) ?(?:級|kyu|grade)?");

    private AimedGrade() {}

    /// The place of the grade in its ladder, from 0; empty where the words name none of them.
    static OptionalInt in(Ladder ladder, String words) {
        String plain = plain(words);
        if (plain.isEmpty()) {
            return OptionalInt.empty();
        }
        Matcher kyu = KYU.matcher(plain);
        String id = kyu.matches() ? (kyu.group(1) == null ? "" : "jun-") + kyu.group(2) : plain;
        for (int i = 0; i < ladder.grades().size(); i++) {
            Grade grade = ladder.grades().get(i);
            if (grade.id().equals(id)
                    || grade.name().texts().values().stream()
                            .anyMatch(name -> plain(name).equals(plain))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static String plain(String words) {
        return Normalizer.normalize(words, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .strip()
                .replaceAll("\\s+", " ");
    }
}
