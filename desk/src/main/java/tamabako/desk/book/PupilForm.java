package tamabako.desk.book;

import java.time.Year;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Languages;
import tamabako.desk.web.Request;
import tamabako.desk.web.Words;
import tamabako.records.About;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Preferences;
import tamabako.records.Pupil;

/// The form in which a pupil is written down.
///
/// @param telling tells the year of today, and what is wrong, to the reader
record PupilForm(ClassBook book, Telling telling) {

    /// The longest name, reading or grade.
    static final int LONGEST = 40;

    /// The oldest pupil, in years.
    private static final int OLDEST = 110;

    private static final Pattern KANA =
            Pattern.compile("[\\p{IsHiragana}\\p{IsKatakana}ー・ \u3000]*");

    private static final List<String> LANGUAGES =
            Languages.of(List.of()).all().stream().map(Words::tag).toList();

    /// The form of a request, in which what was not sent stands as it is with `pupil`.
    static Form of(Request request, Pupil pupil) {
        Map<String, String> usual = new HashMap<>();
        usual.put("name", pupil.name());
        usual.put("kana", pupil.about().kana());
        pupil.about().born().ifPresent(year -> usual.put("born", year.toString()));
        usual.put("language", pupil.language().toLanguageTag());
        usual.put("grade", pupil.about().grade());
        usual.put("group-id", pupil.groupId());
        usual.put("flashing", pupil.preferences().noFlashing() ? "none" : "");
        usual.put("extra", "" + pupil.preferences().extraTime());
        usual.put("pace", "" + pupil.preferences().pace());
        return new Form(request, usual);
    }

    /// The pupil as the form has it. What is wrong is told in the form.
    ///
    /// @param before the pupil as the book has it, or a blank one
    Pupil read(Form form, Pupil before) {
        String group = group(form, before);
        String name = name(form, group, before.id());
        OptionalInt born =
                form.wholeIfAny(
                        "born", telling.today().getYear() - OLDEST, telling.today().getYear());
        About about =
                new About(
                        kana(form),
                        born.isPresent() ? Optional.of(Year.of(born.getAsInt())) : Optional.empty(),
                        form.line("grade", LONGEST),
                        before.about().rosterId());
        Preferences preferences =
                new Preferences(
                        form.isTicked("flashing", "none"),
                        form.whole("extra", 0, Preferences.MOST_EXTRA_TIME),
                        form.whole("pace", Preferences.SLOWEST, Preferences.FASTEST));
        Locale language = Locale.forLanguageTag(form.word("language", LANGUAGES));
        return new Pupil(before.id(), group, name, language, about, preferences, before.demo());
    }

    /// The groups that a pupil may be in: those of the demo class for its own pupils, which go with
    /// it, and the others for the others.
    static List<Group> groups(ClassBook book, Pupil pupil) {
        return book.groups().all().stream().filter(group -> group.demo() == pupil.demo()).toList();
    }

    private String group(Form form, Pupil before) {
        List<String> groups = groups(book, before).stream().map(Group::id).toList();
        return form.text("group-id").isEmpty() ? before.groupId() : form.word("group-id", groups);
    }

    private String name(Form form, String group, String own) {
        String name = form.line("name", LONGEST);
        if (name.replaceAll("[\\p{Cf}\\s]", "").isEmpty()) {
            form.blame("name", telling.words().say("book.name-missing"));
        }
        boolean isTaken =
                book.pupils().in(group).stream()
                        .anyMatch(other ->
                                other.name().equalsIgnoreCase(name) && !other.id().equals(own));
        if (isTaken) {
            form.blame("name", telling.words().say("book.name-twice", name));
        }
        return name;
    }

    private String kana(Form form) {
        String kana = form.line("kana", LONGEST);
        if (!KANA.matcher(kana).matches()) {
            form.blame("kana", telling.words().say("book.kana-other"));
        }
        return kana;
    }
}
