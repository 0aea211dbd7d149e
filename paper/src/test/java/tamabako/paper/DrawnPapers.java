package tamabako.paper;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.frame.Rounding;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Pad;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Story;
import tamabako.problems.Terms;
import tamabako.problems.grade.Amounts;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Beadwork;
import tamabako.problems.grade.Cite;
import tamabako.problems.grade.Figure;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Numbering;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.Signs;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;
import tamabako.testkit.Draw;

/// Papers of both builds, one sat at once and one section by section, with every kind of section,
/// drawn from a seed.
final class DrawnPapers {

    private static final Terms THREE_PLACES =
            Terms.PLAIN.withPlaces(3).withRounding(Rounding.HALF_UP);
    private static final Terms YEN = Terms.PLAIN.withUnit("JPY");

    private DrawnPapers() {}

    /// Ten columns, twenty products and twenty quotients, numbered through, as in the JCCI test
    /// (shuzan.jp/kentei/shuzan); half of each plain, half yen.
    static Paper atOnce(Draw draw, int number) {
        List<PaperSection> sections = new ArrayList<>();
        sections.add(columns(draw, 10, 6, 10, Mode.FRAME, Optional.empty(), YEN, 1));
        sections.add(factors(draw, "product", 20, Optional.empty(), 11));
        sections.add(factors(draw, "quotient", 20, Optional.empty(), 31));
        Pass pass = new Pass.Whole(240);
        return paper(
                number, sections, Optional.of(Duration.ofMinutes(30)), pass, Numbering.THROUGH);
    }

    /// Seven sections of fifteen or thirty problems, each with a time of its own, ranked by score.
    static Paper bySection(Draw draw, int number) {
        Optional<Duration> seven = Optional.of(Duration.ofMinutes(7));
        List<PaperSection> sections = new ArrayList<>();
        sections.add(columns(draw, 30, 11, 10, Mode.FRAME, seven, Terms.PLAIN, 1));
        sections.add(factors(draw, "product", 30, seven, 1));
        sections.add(factors(draw, "quotient", 60, seven, 1));
        sections.add(roots(draw, seven));
        sections.add(pad(draw, seven));
        sections.add(stories(draw, Optional.of(Duration.ofMinutes(10))));
        sections.add(
                columns(
                        draw,
                        10,
                        4,
                        10,
                        Mode.CALLED,
                        Optional.of(Duration.ofSeconds(210)),
                        Terms.PLAIN,
                        1));
        List<Pass.Rank> ranks = new ArrayList<>();
        for (int i = 1; i <= 10; i++) {
            ranks.add(
                    new Pass.Rank(
                            i + "-dan",
                            Label.of(i + " dan", i == 1 ? "初段" : i + "段"),
                            80 + 20 * i));
        }
        Pass pass = new Pass.ByScore(ranks, Pass.Scored.LOWEST_SECTION);
        return paper(number, sections, Optional.empty(), pass, Numbering.BY_SECTION);
    }

    private static Paper paper(
            int number,
            List<PaperSection> sections,
            Optional<Duration> time,
            Pass pass,
            Numbering numbering) {
        Cite cite = new Cite(Set.of(Figure.DIGITS), Label.of("Common practice"), false);
        Grade grade =
                new Grade(
                        "3",
                        Label.of("Grade 3", "3級"),
                        sections.stream().map(PaperSection::section).toList(),
                        time,
                        pass,
                        numbering,
                        WritingRules.STRICT,
                        Optional.empty(),
                        List.of(cite));
        String id = "7KMX-2P9T-%04d".formatted(number);
        return new Paper(id, "Abacus test", grade, number % 30 + 1, sections);
    }

    private static PaperSection section(
            String id,
            Label name,
            List<Problem> problems,
            int points,
            Optional<Duration> time,
            Mode mode,
            Optional<Pad> pad) {
        Format format =
                new Format.Columns(
                        new Lengths.Equal(5, 3), Signs.ADDED, Amounts.PLAIN, Beadwork.ANY);
        Section section =
                new Section(
                        id,
                        name,
                        List.of(new Batch(problems.size(), format)),
                        points,
                        time,
                        mode,
                        Section.Order.AS_LISTED,
                        List.of());
        return new PaperSection(section, problems, pad);
    }

    private static PaperSection columns(
            Draw draw,
            int count,
            int digits,
            int rows,
            Mode mode,
            Optional<Duration> time,
            Terms terms,
            int first) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<BigDecimal> numbers = new ArrayList<>();
            for (int row = 0; row < rows; row++) {
                BigDecimal number = whole(draw, digits);
                numbers.add(row > 0 && i % 3 == 2 && draw.chance(1, 3) ? number.negate() : number);
            }
            Terms own = terms.withPoints(10).withMode(mode);
            problems.add(new Column(String.valueOf(first + i), numbers, own));
        }
        Label name =
                mode == Mode.CALLED
                        ? Label.of("Called columns", "読上算")
                        : Label.of("Columns", "みとり算");
        return section("column", name, problems, 10, time, mode, Optional.empty());
    }

    private static PaperSection factors(
            Draw draw, String kind, int count, Optional<Duration> time, int first) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Terms terms = (i < count / 2 ? THREE_PLACES : YEN).withPoints(5);
            String id = String.valueOf(first + i);
            if (kind.equals("product")) {
                BigDecimal multiplier = draw.decimal(3, i % 2 == 0 ? 2 : 0);
                problems.add(new Product(id, whole(draw, 4), multiplier, terms));
            } else {
                BigDecimal divisor = whole(draw, 3);
                problems.add(new Quotient(id, whole(draw, 6), divisor, terms));
            }
        }
        Label name =
                kind.equals("product") ? Label.of("Products", "かけ算") : Label.of("Quotients", "わり算");
        return section(kind, name, problems, 5, time, Mode.FRAME, Optional.empty());
    }

    private static PaperSection roots(Draw draw, Optional<Duration> time) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            int degree = i <= 20 ? 2 : 3;
            BigDecimal of = whole(draw, degree == 2 ? 4 : 3).pow(degree);
            problems.add(new Root("" + i, degree, of, Terms.PLAIN.withPoints(10)));
        }
        Label name = Label.of("Roots", "開法");
        return section("root", name, problems, 10, time, Mode.FRAME, Optional.empty());
    }

    private static PaperSection pad(Draw draw, Optional<Duration> time) {
        List<List<BigDecimal>> leaves = new ArrayList<>();
        for (int leaf = 0; leaf < 18; leaf++) {
            List<BigDecimal> lines = new ArrayList<>();
            for (int line = 0; line < 5; line++) {
                lines.add(whole(draw, draw.between(4, 8)));
            }
            leaves.add(lines);
        }
        Pad pad = new Pad(leaves);
        List<Problem> problems = new ArrayList<>();
        for (int i = 1; i <= 15; i++) {
            PadLine line = new PadLine((i - 1) % 5 + 1, draw.between(1, 11), 8);
            Terms terms = YEN.withPoints(10).withTold(line);
            problems.add(new Column("" + i, pad.rows(line), terms));
        }
        Label name = Label.of("Slip pad", "伝票算");
        return section("pad", name, problems, 10, time, Mode.FRAME, Optional.of(pad));
    }

    private static PaperSection stories(Draw draw, Optional<Duration> time) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 1; i <= 15; i++) {
            int pieces = draw.between(12, 98);
            int price = draw.between(105, 4980);
            Story story =
                    new Story(
                            Map.of(
                                    "en",
                                    ("A harbour shop orders %d crates of dried fish at ¥%,d a"
                                                    + " crate for the autumn market. How much must it"
                                                    + " pay for all of them?")
                                            .formatted(pieces, price),
                                    "ja",
                                    "港の店が、秋の市のために1箱¥%,dの干物を%d箱注文しました。代金は全部でいくらですか。"
                                            .formatted(price, pieces)),
                            List.of());
            Terms terms = YEN.withPoints(10).withTold(story);
            problems.add(
                    new Product(
                            "" + i, BigDecimal.valueOf(price), BigDecimal.valueOf(pieces), terms));
        }
        Label name = Label.of("Word problems", "応用計算");
        return section("story", name, problems, 10, time, Mode.FRAME, Optional.empty());
    }

    private static BigDecimal whole(Draw draw, int digits) {
        BigDecimal least = BigDecimal.TEN.pow(digits - 1);
        BigDecimal drawn = draw.decimal(digits, 0);
        return drawn.compareTo(least) < 0 ? drawn.add(least) : drawn;
    }
}
