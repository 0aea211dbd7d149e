package tamabako.desk.progress;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tamabako.desk.web.Days;
import tamabako.desk.web.Words;
import tamabako.insight.pooling.MainSlip;
import tamabako.insight.pooling.PupilSlips;
import tamabako.insight.rule.LastingRules;
import tamabako.insight.rule.RuleWords;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.SlipWords;

/// Which slips a pupil makes, and how many over time.
///
/// @param wrong how many wrong answers it rests on
/// @param kinds the commonest kinds first
/// @param main the kind that stands out, if one does; not told beside a rule, which is behind it
/// @param rules wrong rules that the pupil follows, in sentences
/// @param days wrong answers by day, the oldest first; none where there are too few to compare
public record SlipsPart(
        int wrong, List<Line> kinds, Optional<Main> main, List<String> rules, List<DayBar> days) {

    /// So many wrong answers there must be before kinds are told.
    static final int ENOUGH_WRONG = 5;

    private static final int MOST = 5;
    private static final double WORTH_TELLING = 0.5;
    private static final int DAYS_TO_COMPARE = 3;

    /// A day with fewer answers is not drawn: its share would jump about.
    private static final int ANSWERS_OF_A_DAY = 10;

    public SlipsPart {
        kinds = List.copyOf(kinds);
        rules = List.copyOf(rules);
        days = List.copyOf(days);
    }

    /// A kind of slip, and about how many were made.
    ///
    /// @param width of its bar, in hundredths of the commonest kind's
    public record Line(String name, String about, long width) {}

    /// The kind that stands out.
    ///
    /// @param share which part of the pupil's slips it seems to make up, in hundredths
    /// @param certainty how sure that is, in hundredths
    public record Main(String name, long share, long certainty) {}

    /// A day.
    ///
    /// @param width of its bar, in hundredths of the longest
    public record DayBar(String day, int wrong, int answers, long width) {}

    static SlipsPart of(PupilSlips slips, List<Gathered.Day> days, Words reader) {
        Locale language = reader.language();
        SlipWords words = SlipWords.of(language);
        return new SlipsPart(
                slips.wrong(),
                slips.wrong() < ENOUGH_WRONG ? List.of() : kinds(slips, words),
                slips.rules().found() ? Optional.empty() : main(slips, words),
                rules(slips.rules(), RuleWords.of(language)),
                bars(days, reader));
    }

    private static List<Line> kinds(PupilSlips slips, SlipWords words) {
        List<SlipKind> kinds =
                Arrays.stream(SlipKind.values())
                        .filter(kind -> kind != SlipKind.NONE_KNOWN)
                        .filter(kind -> slips.sum().slips().of(kind) >= WORTH_TELLING)
                        .sorted(Comparator.comparingDouble(kind -> -slips.sum().slips().of(kind)))
                        .limit(MOST)
                        .toList();
        double most = kinds.isEmpty() ? 1 : slips.sum().slips().of(kinds.getFirst());
        return kinds.stream()
                .map(kind -> {
                    double number = slips.sum().slips().of(kind);
                    return new Line(
                            words.name(kind),
                            Decimals.tenths(number),
                            Decimals.hundredths(number / most));
                })
                .toList();
    }

    private static Optional<Main> main(PupilSlips slips, SlipWords words) {
        if (!slips.main().standsOut()) {
            return Optional.empty();
        }
        MainSlip.Candidate first = slips.main().likeliest().getFirst();
        return Optional.of(
                new Main(
                        words.name(first.kind()),
                        Decimals.hundredths(first.share()),
                        Decimals.hundredths(first.certainty())));
    }

    private static List<String> rules(LastingRules rules, RuleWords words) {
        return rules.found() ? List.of(words.say(rules.likeliest().getFirst().rule())) : List.of();
    }

    private static List<DayBar> bars(List<Gathered.Day> all, Words reader) {
        List<Gathered.Day> days =
                all.stream().filter(day -> day.answers() >= ANSWERS_OF_A_DAY).toList();
        if (days.size() < DAYS_TO_COMPARE) {
            return List.of();
        }
        double most = days.stream().mapToDouble(SlipsPart::share).max().orElse(0);
        return days.stream()
                .map(day ->
                        new DayBar(
                                Days.say(day.day(), reader.language()),
                                day.answers() - day.right(),
                                day.answers(),
                                most == 0 ? 0 : Decimals.hundredths(share(day) / most)))
                .toList();
    }

    private static double share(Gathered.Day day) {
        return (double) (day.answers() - day.right()) / day.answers();
    }
}
