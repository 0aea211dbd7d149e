package tamabako.insight.mastery;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import tamabako.frame.words.Languages;
import tamabako.frame.words.Phrases;
import tamabako.insight.slip.Move;

/// Says what a pupil has mastered in sentences for a teacher, in one language.
public final class MasteryWords {

    private static final double IN = 1_000;
    private static final MathContext TWO_FIGURES = new MathContext(2);

    private final Locale language;
    private final Phrases phrases;

    private MasteryWords(Locale language) {
        this.language = language;
        this.phrases = Phrases.of(MasteryWords.class, language);
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static MasteryWords of(Locale locale) {
        return new MasteryWords(Languages.nearest(locale));
    }

    /// The language that is spoken.
    public Locale language() {
        return language;
    }

    /// The name of a move, such as "Adding by the five-complement".
    public String name(Move move) {
        return phrases.say("move." + move.word(), Map.of());
    }

    /// The name of a kind of problem, such as "Columns".
    ///
    /// @param kind as [tamabako.problems.Problem#kind()] has it
    public String kind(String kind) {
        return phrases.say("kind." + kind, Map.of());
    }

    /// What may be said of a move: "Taking, direct: mastered. About 0.8 in 1,000 go wrong (between
    /// 0.4 and 1.5)."
    public String say(MoveMastery mastery) {
        Map<String, Object> values = new HashMap<>();
        values.put("name", name(mastery.move()));
        values.put("rate", inThousand(mastery.rate()));
        values.put("low", inThousand(mastery.low()));
        values.put("high", inThousand(mastery.high()));
        values.put("mark", inThousand(mastery.mark()));
        return mastery.isKnown()
                ? say("move.", mastery.statement(), mastery.problemsNeeded(), values)
                : phrases.say("move.not-met", values);
    }

    /// The name of a skill, such as "Multiplication table".
    public String name(Skill skill) {
        return phrases.say("skill." + skill.word(), Map.of());
    }

    /// What may be said of a skill of multiplying and dividing.
    public String say(SkillMastery mastery) {
        Map<String, Object> values = new HashMap<>();
        values.put("name", name(mastery.skill()));
        values.put("rate", inThousand(mastery.rate()));
        values.put("low", inThousand(mastery.low()));
        values.put("high", inThousand(mastery.high()));
        values.put("mark", inThousand(mastery.mark()));
        return say("move.", mastery.statement(), mastery.problemsNeeded(), values);
    }

    /// What may be said of a kind of problem.
    public String say(KindMastery mastery) {
        Map<String, Object> values = new HashMap<>();
        values.put("name", kind(mastery.kind()));
        values.put("right", mastery.right());
        values.put("answers", mastery.answers());
        return say("kind.", mastery.statement(), mastery.problemsNeeded(), values);
    }

    private String say(
            String before, Statement statement, OptionalInt problems, Map<String, Object> values) {
        problems.ifPresent(number -> values.put("problems", number));
        boolean open = statement == Statement.NEEDS_EVIDENCE && problems.isEmpty();
        return phrases.say(before + (open ? "open" : statement.word()), values);
    }

    private static String inThousand(double rate) {
        BigDecimal rounded = new BigDecimal(IN * rate).round(TWO_FIGURES);
        return rounded.setScale(Math.max(0, rounded.scale())).toPlainString();
    }
}
