package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import tamabako.frame.words.Languages;
import tamabako.frame.words.Phrases;
import tamabako.problems.grade.Section;

/// Says how ready a pupil is, in sentences for a teacher, in one language.
public final class ReadinessWords {

    /// Helps that raise the chance by less are not said.
    private static final double WORTH_SAYING = 0.01;

    private final Locale language;
    private final Phrases phrases;

    private ReadinessWords(Locale language) {
        this.language = language;
        this.phrases = Phrases.of(ReadinessWords.class, language);
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static ReadinessWords of(Locale locale) {
        return new ReadinessWords(Languages.nearest(locale));
    }

    /// The language that is spoken.
    public Locale language() {
        return language;
    }

    /// All there is to say: the chance, what limits it, what would help most, and of each section
    /// what is not known yet.
    public List<String> say(Readiness readiness) {
        List<String> said = new ArrayList<>();
        said.add(pass(readiness));
        readiness
                .next()
                .ifPresent(next ->
                        readiness.ranks().stream()
                                .filter(rank -> rank.rank().equals(next))
                                .findFirst()
                                .ifPresent(rank ->
                                        said.add(
                                                chance(
                                                        "rank",
                                                        rank.rank().name().in(language),
                                                        rank.chance()))));
        readiness
                .limiting()
                .ifPresent(section ->
                        said.add(
                                phrases.say(
                                        "limiting",
                                        Map.of("section", section.section().name().in(language)))));
        readiness.helps().stream()
                .filter(help -> help.gain() >= WORTH_SAYING)
                .limit(2)
                .forEach(help -> said.add(say(help, readiness)));
        readiness.sections().forEach(section -> said.add(say(section)));
        return said;
    }

    /// The chance to pass, or how much is needed before it can be told.
    public String pass(Readiness readiness) {
        String grade = readiness.grade().name().in(language);
        if (readiness.pass().isPresent()) {
            return chance("pass", grade, readiness.pass().get());
        }
        return untold("untold", grade, readiness.more());
    }

    private String untold(String key, String name, int more) {
        return phrases.say(more == 1 ? key + ".one" : key, Map.of("name", name, "more", more));
    }

    private String chance(String key, String name, Chance chance) {
        return phrases.say(
                key,
                Map.of(
                        "name", name,
                        "chance", percent(chance.likely()),
                        "low", percent(chance.low()),
                        "high", percent(chance.high())));
    }

    /// One section: its chance, its points and its clock, or what is needed before they are told.
    public String say(SectionReadiness readiness) {
        Section section = readiness.section();
        String name = section.name().in(language);
        if (readiness.told().isEmpty()) {
            return untold("section.untold", name, readiness.proof().more());
        }
        SectionReadiness.Figures told = readiness.told().get();
        String points =
                phrases.say(
                        "section.points",
                        Map.of(
                                "name", name,
                                "points", Math.round(told.points()),
                                "full", section.fullMarks()));
        String enough =
                told.enough()
                        .map(chance ->
                                phrases.say(
                                        "section.enough",
                                        Map.of("chance", percent(chance.likely()))))
                        .orElse("");
        String clock =
                told.timeRunsOut() >= WORTH_SAYING
                        ? phrases.say(
                                "section.clock", Map.of("chance", percent(told.timeRunsOut())))
                        : "";
        return points + enough + clock;
    }

    /// What would help, and how much.
    public String say(Help help, Readiness readiness) {
        String names =
                readiness.sections().stream()
                        .filter(one -> one.field().equals(help.field()))
                        .map(one -> one.section().name().in(language))
                        .collect(Collectors.joining(phrases.say("and", Map.of())));
        String key =
                switch (help.way()) {
                    case FEWER_SLIPS -> "help.fewer";
                    case FASTER -> "help.faster";
                };
        return phrases.say(key, Map.of("name", names, "gain", percent(help.gain())));
    }

    /// A chance in hundredths: 1 to 99, for nothing is sure.
    static long percent(double chance) {
        return Math.clamp(Math.round(100 * chance), 1, 99);
    }
}
