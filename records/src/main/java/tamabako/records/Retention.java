package tamabako.records;

import java.time.LocalDate;
import java.time.Period;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/// Who has not been seen for so long that the teacher may want to erase them.
///
/// Nothing is ever erased by itself, and how long records are to be kept is for local rules to say.
///
/// @param months after how many months without anything new a pupil is listed, [#LEAST] to [#MOST]
public record Retention(int months) {

    /// The name of the setting.
    public static final String SETTING = "retention";

    /// What holds where nothing was set. Common practice, no published source.
    public static final Retention USUAL = new Retention(24);

    /// The shortest time, in months.
    public static final int LEAST = 1;

    /// The longest time, in months.
    public static final int MOST = 240;

    public Retention {
        if (months < LEAST || months > MOST) {
            throw new IllegalArgumentException("1 to 240 months, not " + months + ".");
        }
    }

    /// A pupil who has not been seen for long.
    ///
    /// @param lastSeen as ISO 8601 the day or moment of the last thing written down; empty where
    ///   there is none
    public record Due(Pupil pupil, String lastSeen) {}

    /// What was set in `book`.
    public static Retention of(ClassBook book) {
        return book.settings()
                .find(SETTING)
                .filter(text -> text.matches("\\d{1,3}"))
                .map(Integer::valueOf)
                .filter(months -> months >= LEAST && months <= MOST)
                .map(Retention::new)
                .orElse(USUAL);
    }

    /// Sets it in `book`.
    public void keepIn(ClassBook book) {
        book.settings().keep(SETTING, Integer.toString(months));
    }

    /// The pupils of whom nothing new was written down for so long, the longest gone first.
    public List<Due> due(ClassBook book, LocalDate today) {
        String limit = today.minus(Period.ofMonths(months)).toString();
        Map<String, String> seen = book.pupils().lastSeen();
        return book.pupils().all().stream()
                .map(pupil -> new Due(pupil, seen.getOrDefault(pupil.id(), "")))
                .filter(due -> due.lastSeen().compareTo(limit) < 0)
                .sorted(Comparator.comparing(Due::lastSeen))
                .toList();
    }
}
