package tamabako.records.roster;

import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tamabako.records.About;
import tamabako.records.Preferences;
import tamabako.records.Pupil;

/// Reads the cells of one entry as what they mean for a pupil.
final class CellReading {

    private final Entry entry;
    private final List<Told> wrong = new ArrayList<>();
    private final List<Told> notices = new ArrayList<>();
    private final Optional<Year> born;
    private final Optional<Locale> language;
    private final Optional<Boolean> noFlashing;
    private final Optional<Integer> extraTime;
    private final Optional<Integer> pace;
    private final String group;

    CellReading(Entry entry, Wishes wishes) {
        this.entry = entry;
        this.group = entry.cell(Field.GROUP).orElse(wishes.group()).strip();
        this.born = born(wishes.thisYear());
        this.language =
                read(
                        Field.LANGUAGE,
                        Cells::language,
                        cell -> new Remark.NoLanguage(cell, Cells.languages()));
        this.noFlashing = read(Field.NO_FLASHING, Cells::yes, Remark.NeitherYesNorNo::new);
        this.extraTime = percent(Field.EXTRA_TIME, 0, Preferences.MOST_EXTRA_TIME);
        this.pace = percent(Field.PACE, Preferences.SLOWEST, Preferences.FASTEST);
    }

    /// The name; blank where there is none.
    String name() {
        return entry.cell(Field.NAME).orElseGet(() -> joined(Field.FAMILY_NAME, Field.GIVEN_NAME));
    }

    /// The name of the group; blank where none is given.
    String group() {
        return group;
    }

    /// The roster number; blank where there is none.
    String id() {
        return entry.cell(Field.ROSTER_ID).map(Cells::key).orElse("");
    }

    List<Told> wrong() {
        return wrong;
    }

    List<Told> notices() {
        return notices;
    }

    /// The pupil with everything that the entry tells.
    Pupil onto(Pupil pupil) {
        About about = pupil.about();
        Preferences preferences = pupil.preferences();
        String reading =
                entry.cell(Field.READING)
                        .orElseGet(() -> joined(Field.FAMILY_READING, Field.GIVEN_READING));
        return new Pupil(
                pupil.id(),
                pupil.groupId(),
                kept(pupil.name(), name()),
                language.orElse(pupil.language()),
                new About(
                        kept(about.kana(), reading),
                        born.or(about::born),
                        kept(about.grade(), entry.cell(Field.GRADE).orElse("")),
                        kept(about.rosterId(), id())),
                new Preferences(
                        noFlashing.orElse(preferences.noFlashing()),
                        extraTime.orElse(preferences.extraTime()),
                        pace.orElse(preferences.pace())),
                pupil.demo());
    }

    /// What is written, unless that is nothing, or the same in wider letters.
    private static String kept(String before, String written) {
        return written.isBlank() || Cells.key(before).equals(Cells.key(written)) ? before : written;
    }

    /// Family name and given name in the order in which the language of their letters says them.
    private String joined(Field family, Field given) {
        List<String> parts =
                Stream.of(family, given).flatMap(field -> entry.cell(field).stream()).toList();
        boolean isEastern =
                parts.stream().flatMapToInt(String::codePoints).anyMatch(CellReading::isEastern);
        List<String> inOrder = isEastern ? parts : parts.reversed();
        return inOrder.stream().collect(Collectors.joining(" "));
    }

    private static boolean isEastern(int letter) {
        return switch (Character.UnicodeScript.of(letter)) {
            case HAN, HIRAGANA, KATAKANA, HANGUL -> true;
            default -> false;
        };
    }

    private Optional<Year> born(Year thisYear) {
        Optional<BirthYear> read =
                read(Field.BORN, cell -> Cells.born(cell, thisYear), Remark.NoYear::new);
        if (read.map(BirthYear::exact).orElse(false)) {
            notices.add(new Told(entry.placeOf(Field.BORN), new Remark.OnlyYearKept()));
        }
        return read.map(BirthYear::year);
    }

    private Optional<Integer> percent(Field field, int least, int most) {
        return read(
                field,
                cell -> Cells.percent(cell, least, most),
                cell -> new Remark.NoPercent(cell, least, most));
    }

    private <T> Optional<T> read(
            Field field, Function<String, Optional<T>> meaning, Function<String, Remark> flaw) {
        Optional<String> cell = entry.cell(field);
        Optional<T> meant = cell.flatMap(meaning);
        if (cell.isPresent() && meant.isEmpty()) {
            wrong.add(new Told(entry.placeOf(field), flaw.apply(cell.get())));
        }
        return meant;
    }
}
