package tamabako.desk.ladder;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.desk.web.Words;
import tamabako.frame.Technique;
import tamabako.problems.grade.Amounts;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Beadwork;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Signs;
import tamabako.problems.grade.Span;
import tamabako.problems.words.ProblemWords;

/// Says what a grade asks, in the words of the page.
public final class FormatWords {

    private final Words words;

    public FormatWords(Words words) {
        this.words = words;
    }

    /// A batch in a line, such as "10 columns: 5 rows of 3 digits, 4 of them with minus rows".
    public String say(Batch batch) {
        int count = batch.count();
        return switch (batch.format()) {
            case Format.Columns columns -> words.say("format.columns", count, columns(columns));
            case Format.Products products ->
                    words.say("format.products", count, joined(products(products)));
            case Format.Quotients quotients ->
                    words.say("format.quotients", count, joined(quotients(quotients)));
            case Format.Roots roots ->
                    words.say("format.roots-" + roots.degree(), count, digits(roots.digits()));
            case Format.PadLines lines -> words.say("format.pads", count, joined(pads(lines)));
            case Format.Stories stories -> words.say("format.stories", count, stories.level());
            case Format.Readings readings ->
                    words.say("format.readings", count, digits(readings.digits()));
        };
    }

    private String columns(Format.Columns columns) {
        List<String> parts = new ArrayList<>();
        parts.add(lengths(columns.lengths()));
        amounts(columns.amounts(), parts);
        signs(columns.signs(), parts);
        beadwork(columns.beadwork(), parts);
        return joined(parts);
    }

    private String lengths(Lengths lengths) {
        String rows = words.count("rows", lengths.rows());
        String digits = digits(lengths.digits());
        return switch (lengths) {
            case Lengths.Equal _, Lengths.Between _ -> words.say("lengths.plain", rows, digits);
            case Lengths.InAll inAll -> words.say("lengths.in-all", rows, digits, inAll.ji());
            case Lengths.Table table ->
                    words.say(
                            "lengths.table",
                            rows,
                            joined(
                                    table.rowsByDigits().entrySet().stream()
                                            .map(line ->
                                                    words.say(
                                                            "lengths.line",
                                                            line.getValue(),
                                                            digits(Span.of(line.getKey()))))
                                            .toList()));
        };
    }

    private void amounts(Amounts amounts, List<String> parts) {
        amounts.unit().ifPresent(unit -> parts.add(words.say("format.unit", unit)));
        if (amounts.places() > 0) {
            parts.add(words.say("format.places", amounts.places()));
        }
    }

    private void signs(Signs signs, List<String> parts) {
        if (signs.mixed().count() > 0) {
            parts.add(
                    words.say(
                            "format.mixed",
                            signs.mixed().count(),
                            counted("minus-rows", signs.minusRows())));
        }
        if (signs.negative().count() > 0) {
            parts.add(words.say("format.negative", signs.negative().count()));
        }
    }

    private void beadwork(Beadwork beadwork, List<String> parts) {
        if (beadwork.allowed().size() < Technique.values().length) {
            parts.add(words.say("format.only", techniques(beadwork.allowed())));
        }
        if (!beadwork.required().isEmpty()) {
            String key = beadwork.inTaking() ? "format.each-takes" : "format.each-has";
            parts.add(words.say(key, techniques(beadwork.required())));
        }
        switch (beadwork.runningOn()) {
            case ALLOWED -> {}
            case NEVER -> parts.add(words.say("format.running-never"));
            case REQUIRED -> parts.add(words.say("format.running-required"));
        }
    }

    private String techniques(Set<Technique> techniques) {
        return joined(
                techniques.stream()
                        .sorted()
                        .map(technique ->
                                ProblemWords.of(words.language())
                                        .say("technique." + technique.word(), Map.of()))
                        .toList());
    }

    private List<String> products(Format.Products products) {
        List<String> parts = new ArrayList<>();
        parts.add(
                words.say(
                        "factors.product",
                        span(products.inAll()),
                        span(products.multiplicand()),
                        span(products.multiplier())));
        answers(products.answers(), parts);
        return parts;
    }

    private List<String> quotients(Format.Quotients quotients) {
        List<String> parts = new ArrayList<>();
        parts.add(
                words.say(
                        "factors.quotient",
                        span(quotients.inAll()),
                        span(quotients.divisor()),
                        span(quotients.quotient())));
        answers(quotients.answers(), parts);
        return parts;
    }

    private void answers(Format.Answers answers, List<String> parts) {
        answers.unit().ifPresent(unit -> parts.add(words.say("format.unit", unit)));
        if (answers.decimals() > 0) {
            parts.add(words.say("format.decimals", answers.decimals()));
        }
        answers.rounded()
                .ifPresent(rounded ->
                        parts.add(
                                rounded.places() == 0
                                        ? words.say("format.rounded-whole")
                                        : words.say("format.rounded", rounded.places())));
    }

    private List<String> pads(Format.PadLines lines) {
        List<String> parts = new ArrayList<>();
        parts.add(words.say("format.pad", lines.leaves(), lines.padLeaves(), lines.lines()));
        parts.add(digits(lines.digits()));
        amounts(lines.amounts(), parts);
        return parts;
    }

    /// What has to be reached, such as "70 of 100 points".
    public String pass(Grade grade) {
        return switch (grade.pass()) {
            case Pass.Whole(int points) -> words.say("pass.whole", points, grade.fullMarks());
            case Pass.PointsInEach(int points) -> words.say("pass.points-in-each", points);
            case Pass.RightInEach(int answers) -> words.say("pass.right-in-each", answers);
            case Pass.ByScore score ->
                    words.say(
                            score.scored() == Pass.Scored.WHOLE
                                    ? "pass.by-score"
                                    : "pass.by-lowest",
                            joined(
                                    score.ranks().stream()
                                            .map(rank ->
                                                    words.say(
                                                            "pass.rank",
                                                            rank.name().in(words.language()),
                                                            rank.points()))
                                            .toList()));
        };
    }

    /// A time, such as "3 min 30 s"; empty for none.
    public String time(Optional<Duration> time) {
        return time.map(this::time).orElse("");
    }

    private String time(Duration time) {
        long minutes = time.toMinutes();
        int seconds = time.toSecondsPart();
        if (seconds == 0) {
            return words.say("time.minutes", minutes);
        }
        return minutes == 0
                ? words.say("time.seconds", seconds)
                : words.say("time.both", minutes, seconds);
    }

    private String joined(List<String> parts) {
        return String.join(words.say("list.between"), parts);
    }

    private String digits(Span span) {
        return counted("digits", span);
    }

    /// So many of something, such as "1 digit" or "2 to 4 digits".
    private String counted(String key, Span span) {
        return span.isOne()
                ? words.count(key, span.least())
                : words.say(key + ".span", span.least(), span.most());
    }

    private String span(Span span) {
        return span.isOne()
                ? Integer.toString(span.least())
                : words.say("span", span.least(), span.most());
    }
}
