package tamabako.insight.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import tamabako.frame.words.Languages;
import tamabako.frame.words.Phrases;
import tamabako.insight.mastery.MasteryWords;
import tamabako.insight.plan.NextPractice.Reason;
import tamabako.insight.slip.SlipWords;
import tamabako.problems.grade.Grade;

/// Says why a plan is as it is, in sentences for a teacher, in one language.
public final class PlanWords {

    private final Locale language;
    private final Phrases phrases;
    private final MasteryWords moves;
    private final SlipWords slips;

    private PlanWords(Locale language) {
        this.language = language;
        this.phrases = Phrases.of(PlanWords.class, language);
        this.moves = MasteryWords.of(language);
        this.slips = SlipWords.of(language);
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static PlanWords of(Locale locale) {
        return new PlanWords(Languages.nearest(locale));
    }

    /// The language that is spoken.
    public Locale language() {
        return language;
    }

    /// The reasons of a plan for `grade`, one sentence each.
    public List<String> say(NextPractice practice, Grade grade) {
        return practice.reasons().stream().map(reason -> say(reason, grade)).toList();
    }

    /// One reason.
    public String say(Reason reason, Grade grade) {
        String section =
                grade.section(reason.section())
                        .map(one -> one.name().in(language))
                        .orElse(reason.section());
        String number = reason.problems() == 1 ? ".one" : "";
        return switch (reason.why()) {
            case TO_FIND_OUT ->
                    phrases.say(
                            "find-out" + number,
                            Map.of("n", reason.problems(), "section", section));
            case AS_IN_EXAM ->
                    phrases.say(
                            "exam" + number, Map.of("n", reason.problems(), "section", section));
            case COSTS_MOST ->
                    phrases.say(
                            (reason.focus() instanceof Focus.OfKind ? "slip" : "move") + number,
                            Map.of(
                                    "n", reason.problems(),
                                    "focus", name(reason.focus(), grade),
                                    "section", section,
                                    "share", Math.max(1, Math.round(100 * reason.share()))));
        };
    }

    /// The name of a focus.
    public String name(Focus focus, Grade grade) {
        return switch (focus) {
            case Focus.AsInExam(String id) ->
                    grade.section(id).map(section -> section.name().in(language)).orElse(id);
            case Focus.OfMove(var move) -> moves.name(move);
            case Focus.OfKind(var kind) -> slips.name(kind);
        };
    }
}
