package tamabako.desk.progress;

import java.util.List;
import java.util.Locale;
import tamabako.insight.mastery.KindMastery;
import tamabako.insight.mastery.MasteryWords;
import tamabako.insight.mastery.MoveMastery;
import tamabako.insight.mastery.PupilMastery;
import tamabako.insight.mastery.SkillMastery;

/// What a pupil masters: each move of the hand, the tables of held and added digits, each kind of
/// problem, and what multiplying and dividing ask besides.
///
/// @param manner `frame` or `mind`
/// @param answers how many answers it rests on
/// @param moves the moves that were met; none for work in the head
/// @param skills those of multiplying and dividing that were called for
/// @param kinds the kinds of problem
/// @param adding the table of held and added digits
/// @param taking the table of held and taken digits
public record MasteryPart(
        String manner,
        int answers,
        List<RateLine> moves,
        List<RateLine> skills,
        List<KindLine> kinds,
        DigitTable adding,
        DigitTable taking) {

    public MasteryPart {
        moves = List.copyOf(moves);
        skills = List.copyOf(skills);
        kinds = List.copyOf(kinds);
    }

    /// A move or a skill.
    ///
    /// @param statement such as `mastered`
    /// @param said the statement in a sentence
    /// @param bar how often it goes wrong, and how sure that is
    public record RateLine(String statement, String said, RateBar bar) {}

    /// A kind of problem.
    public record KindLine(String statement, String said) {}

    static MasteryPart of(PupilMastery mastery, Locale language) {
        MasteryWords words = MasteryWords.of(language);
        return new MasteryPart(
                mastery.manner().word(),
                mastery.answers(),
                mastery.moves().stream()
                        .filter(move -> move.steps() > 0)
                        .map(move -> line(move, words))
                        .toList(),
                mastery.skills().stream().map(skill -> line(skill, words)).toList(),
                mastery.kinds().stream().map(kind -> line(kind, words)).toList(),
                DigitTable.of(mastery, true),
                DigitTable.of(mastery, false));
    }

    private static RateLine line(MoveMastery move, MasteryWords words) {
        return new RateLine(
                move.statement().word(),
                words.say(move),
                RateBar.of(move.low(), move.rate(), move.high(), move.mark()));
    }

    private static RateLine line(SkillMastery skill, MasteryWords words) {
        return new RateLine(
                skill.statement().word(),
                words.say(skill),
                RateBar.of(skill.low(), skill.rate(), skill.high(), skill.mark()));
    }

    private static KindLine line(KindMastery kind, MasteryWords words) {
        return new KindLine(kind.statement().word(), words.say(kind));
    }

    /// Whether any bead was moved.
    public boolean onTheFrame() {
        return !moves.isEmpty();
    }
}
