package tamabako.problems.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.Unreadable;
import tamabako.problems.grade.Figure;
import tamabako.problems.grade.Span;
import tamabako.problems.grade.file.Fault;
import tamabako.problems.making.Custom;
import tamabako.problems.making.Made;
import tamabako.problems.marking.Mark;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.story.UnreadableStory;

class ProblemWordsTest {

    private static final List<String> LANGUAGES = List.of("en", "ja");
    private static final List<Class<?>> SEALED =
            List.of(
                    Unreadable.Reason.class,
                    Made.Reason.class,
                    UnreadableStory.Fault.class,
                    PaperId.Reason.class,
                    PaperMade.Reason.class,
                    Mark.class,
                    Mark.Fault.class,
                    Mark.Form.class,
                    Fault.class);

    @Test
    void everyReasonHasATemplateInEveryLanguageAndFillsIt() throws ReflectiveOperationException {
        for (Class<?> reason : reasons()) {
            Sayable sample = sample(reason);
            for (String language : LANGUAGES) {
                String said = ProblemWords.of(Locale.of(language)).say(sample);
                assertThat(said)
                        .as(sample.template())
                        .isNotBlank()
                        .doesNotContainPattern("\\{[a-zA-Z]+[:}]")
                        .endsWith(language.equals("en") ? "." : "。");
            }
        }
    }

    @Test
    void languagesHaveTheSameKeysAndTheSameBlanks() {
        Map<String, Set<String>> english = blanks("en");
        for (String language : LANGUAGES) {
            assertThat(blanks(language)).as(language).isEqualTo(english);
        }
    }

    @Test
    void everyPartOfAWishHasAName() {
        for (Made.Part part : Made.Part.values()) {
            for (String language : LANGUAGES) {
                assertThat(ProblemWords.of(Locale.of(language)).say(part)).isNotBlank();
            }
        }
    }

    @Test
    void everySortOfFigureHasAName() {
        for (Figure figure : Figure.values()) {
            for (String language : LANGUAGES) {
                assertThat(ProblemWords.of(Locale.of(language)).say(figure)).isNotBlank();
            }
        }
    }

    @Test
    void everyCustomHasAName() throws ReflectiveOperationException {
        for (Class<?> custom : Custom.class.getPermittedSubclasses()) {
            for (String language : LANGUAGES) {
                assertThat(ProblemWords.of(Locale.of(language)).say(sample(custom)))
                        .isNotBlank()
                        .doesNotContain("{");
            }
        }
    }

    @Test
    void aLanguageWithoutAFileIsSpokenInEnglish() {
        assertThat(ProblemWords.of(Locale.FRENCH).language()).isEqualTo(Locale.ENGLISH);
        assertThat(ProblemWords.of(Locale.JAPAN).language()).isEqualTo(Locale.JAPANESE);
        assertThat(ProblemWords.of(Locale.UK).language()).isEqualTo(Locale.ENGLISH);
    }

    @Test
    void theNumberChoosesTheWording() {
        ProblemWords english = ProblemWords.of(Locale.ENGLISH);

        assertThat(english.say(new Made.Reason.OnlySoMany(5, 1)))
                .startsWith("There is only 1 such problem, and 5 were");
        assertThat(english.say(new Made.Reason.OnlySoMany(5, 3)))
                .startsWith("There are only 3 such problems, and 5 were");
    }

    @Test
    void whatFillsABlankIsNotFilledAgain() {
        Unreadable.Reason reason = new Unreadable.Reason.UnknownKey("{known}$1\\", List.of("id"));

        assertThat(ProblemWords.of(Locale.ENGLISH).say(reason))
                .isEqualTo("The key \"{known}$1\\\" is not known here. Use one of these: id.");
    }

    @Test
    void aMissingValueIsRefused() {
        ProblemWords english = ProblemWords.of(Locale.ENGLISH);

        assertThatThrownBy(() -> english.say("unreadable.not-json", Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("{position}");
    }

    private static List<Class<?>> reasons() {
        List<Class<?>> reasons = new ArrayList<>();
        for (Class<?> sealed : SEALED) {
            reasons.addAll(Arrays.asList(sealed.getPermittedSubclasses()));
        }
        assertThat(reasons).hasSizeGreaterThan(40);
        return reasons;
    }

    private static Sayable sample(Class<?> reason) throws ReflectiveOperationException {
        RecordComponent[] components = reason.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = value(types[i]);
        }
        return (Sayable) reason.getDeclaredConstructor(types).newInstance(values);
    }

    private static Object value(Class<?> type) {
        if (type == int.class) {
            return 3;
        }
        if (type == String.class) {
            return "x";
        }
        if (type == List.class) {
            return List.of("id", "kind");
        }
        if (type == Set.class) {
            return Set.of(Technique.DIRECT);
        }
        if (type == java.math.BigDecimal.class) {
            return java.math.BigDecimal.TWO;
        }
        if (type == Span.class) {
            return new Span(3, 5);
        }
        if (type == Made.Part.class) {
            return Made.Part.ROWS;
        }
        if (type == Custom.class) {
            return new Custom.InnerZeros(1, 2);
        }
        if (type == Made.Reason.class) {
            return new Made.Reason.NoneFound(100);
        }
        if (type == Mark.Fault.class) {
            return new Mark.Fault.RemainderMissing();
        }
        if (type == Mark.Form.class) {
            return new Mark.Form.CommaMissing();
        }
        throw new AssertionError("No sample of " + type);
    }

    private static Map<String, Set<String>> blanks(String language) {
        ResourceBundle templates =
                ResourceBundle.getBundle("tamabako.problems.words.words", Locale.of(language));
        Map<String, Set<String>> blanks = new java.util.TreeMap<>();
        for (String key : templates.keySet()) {
            Set<String> names = new TreeSet<>();
            Pattern.compile("\\{([a-zA-Z]+)[:}]")
                    .matcher(templates.getString(key))
                    .results()
                    .forEach(blank -> names.add(blank.group(1)));
            blanks.put(key, names);
        }
        assertThat(templates.getLocale().getLanguage()).isEqualTo(language);
        return blanks;
    }
}
