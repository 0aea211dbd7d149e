package tamabako.desk.progress;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tamabako.insight.readiness.Chance;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.ReadinessWords;

/// How ready a pupil is for the next grades of a ladder.
///
/// @param ladder the name of the ladder
/// @param choices the ladders that the teacher may choose from
/// @param grades the next grades, the nearest first
public record ReadinessPart(String ladder, List<Choice> choices, List<GradeLine> grades) {

    public ReadinessPart {
        choices = List.copyOf(choices);
        grades = List.copyOf(grades);
    }

    /// A ladder to choose.
    public record Choice(String id, String name, boolean chosen) {}

    /// A grade.
    ///
    /// @param name the grade's name
    /// @param band where the chance lies; empty where nothing is told
    /// @param said everything in sentences, the chance first
    /// @param ranks the chances of each rank, for grades that have ranks
    public record GradeLine(
            String name, Optional<Band> band, List<String> said, List<RankLine> ranks) {
        public GradeLine {
            said = List.copyOf(said);
            ranks = List.copyOf(ranks);
        }
    }

    /// A rank.
    public record RankLine(String name, Band band) {}

    /// A chance with its band, in hundredths.
    public record Band(long low, long likely, long high) {

        static Band of(Chance chance) {
            return new Band(
                    Decimals.chance(chance.low()),
                    Decimals.chance(chance.likely()),
                    Decimals.chance(chance.high()));
        }

        /// How wide the band is, and wide enough to be seen.
        public long width() {
            return Math.max(1, high - low);
        }
    }

    static GradeLine line(Readiness readiness, Locale language) {
        ReadinessWords words = ReadinessWords.of(language);
        return new GradeLine(
                readiness.grade().name().in(language),
                readiness.pass().map(Band::of),
                words.say(readiness),
                readiness.ranks().stream()
                        .map(rank ->
                                new RankLine(
                                        rank.rank().name().in(language), Band.of(rank.chance())))
                        .toList());
    }
}
