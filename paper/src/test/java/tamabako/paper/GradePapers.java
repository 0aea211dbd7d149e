package tamabako.paper;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.frame.Rounding;
import tamabako.problems.Column;
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
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.Numbering;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.Span;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;
import tamabako.testkit.Draw;

/// Papers in the shape of a grade: as many problems, rows and digits as it asks for, the digits
/// drawn from a seed without any of the customs of setting. They are as wide as true papers get, or
/// wider.
final class GradePapers {

    private final Draw draw;
    private int next = 1;

    private GradePapers(Draw draw) {
        this.draw = draw;
    }

    static Paper of(Ladder ladder, Grade grade, Draw draw) {
        GradePapers papers = new GradePapers(draw);
        List<PaperSection> sections = new ArrayList<>();
        for (Section section : grade.sections()) {
            if (grade.numbering() == Numbering.BY_SECTION) {
                papers.next = 1;
            }
            sections.add(papers.section(section));
        }
        return new Paper("7KMX-2P9T-HC4R", ladder.id(), grade, 1, sections);
    }

    /// The paper of only the section at `place`.
    static Paper only(Paper paper, int place) {
        return new Paper(
                paper.id(),
                paper.ladder(),
                paper.grade(),
                paper.form(),
                List.of(paper.sections().get(place)));
    }

    private PaperSection section(Section section) {
        List<Problem> problems = new ArrayList<>();
        Optional<Pad> pad = Optional.empty();
        for (Batch batch : section.batches()) {
            if (batch.format() instanceof Format.PadLines lines) {
                pad = Optional.of(pad(lines));
            }
            for (int i = 0; i < batch.count(); i++) {
                Problem problem = problem(batch.format(), pad, i);
                problems.add(problem.withId(String.valueOf(next++)));
            }
        }
        return new PaperSection(section, ruled(problems, section), pad);
    }

    /// The problems under the points and the mode of the section.
    private static List<Problem> ruled(List<Problem> problems, Section section) {
        return problems.stream()
                .map(problem -> {
                    Terms terms =
                            problem.terms().withPoints(section.points()).withMode(section.mode());
                    return switch (problem) {
                        case Column(var id, var rows, _) -> new Column(id, rows, terms);
                        case Product(var id, var first, var second, _) ->
                                new Product(id, first, second, terms);
                        case Quotient(var id, var first, var second, _) ->
                                new Quotient(id, first, second, terms);
                        case Root(var id, int degree, var of, _) -> new Root(id, degree, of, terms);
                    };
                })
                .map(Problem.class::cast)
                .toList();
    }

    private Problem problem(Format format, Optional<Pad> pad, int place) {
        return switch (format) {
            case Format.Columns columns -> column(columns);
            case Format.Products(Span inAll, Span first, Span second, var answers) -> {
                int digits = draw.between(second.least(), second.most());
                int others = Math.clamp(inAll.most() - digits, first.least(), first.most());
                int places = answers.decimals() > 0 ? draw.between(0, others) : 0;
                yield new Product("", number(others, places), number(digits, 0), terms(answers));
            }
            case Format.Quotients(Span inAll, Span divisor, Span quotient, var answers) -> {
                int digits = draw.between(divisor.least(), divisor.most());
                int others = Math.clamp(inAll.most() - digits, quotient.least(), quotient.most());
                BigDecimal by = number(digits, 0);
                int places = answers.decimals() > 0 ? draw.between(0, 4) : 0;
                BigDecimal dividend = by.multiply(number(others, places));
                yield new Quotient("", dividend, by, terms(answers));
            }
            case Format.Roots(int degree, Span digits) ->
                    new Root("", degree, number(digits.most(), 0).pow(degree), Terms.PLAIN);
            case Format.PadLines lines -> padLine(lines, pad.orElseThrow(), place);
            case Format.Stories _ -> story();
            case Format.Readings(Span digits) ->
                    new Column("", List.of(number(digits.most(), 0)), Terms.PLAIN);
        };
    }

    private Problem column(Format.Columns columns) {
        Span digits = columns.lengths().digits();
        List<BigDecimal> rows = new ArrayList<>();
        for (int i = 0; i < columns.lengths().rows(); i++) {
            int places = columns.amounts().places();
            int length = Math.max(places + 1, draw.between(digits.least(), digits.most()));
            BigDecimal row = number(length, places);
            rows.add(i > 0 && draw.chance(1, 5) ? row.negate() : row);
        }
        return new Column("", rows, terms(columns.amounts()));
    }

    private Pad pad(Format.PadLines format) {
        List<List<BigDecimal>> leaves = new ArrayList<>();
        for (int leaf = 0; leaf < format.padLeaves(); leaf++) {
            List<BigDecimal> lines = new ArrayList<>();
            for (int line = 0; line < format.lines(); line++) {
                lines.add(number(draw.between(format.digits().least(), format.digits().most()), 0));
            }
            leaves.add(lines);
        }
        return new Pad(leaves);
    }

    private Problem padLine(Format.PadLines format, Pad pad, int place) {
        int first = draw.between(1, format.padLeaves() - format.leaves() + 1);
        PadLine asked = new PadLine(place % format.lines() + 1, first, format.leaves());
        return new Column("", pad.rows(asked), terms(format.amounts()).withTold(asked));
    }

    private Problem story() {
        int pieces = draw.between(12, 98);
        int price = draw.between(105, 4980);
        Story story =
                new Story(
                        Map.of(
                                "en",
                                "A shop orders %d crates of dried fish at ¥%,d a crate. What do they cost?"
                                        .formatted(pieces, price),
                                "ja",
                                "港の店が、1箱¥%,dの干物を%d箱注文しました。代金はいくらですか。".formatted(price, pieces)),
                        List.of());
        Terms terms = Terms.PLAIN.withUnit("JPY").withTold(story);
        return new Product("", BigDecimal.valueOf(price), BigDecimal.valueOf(pieces), terms);
    }

    private static Terms terms(Amounts amounts) {
        return amounts.unit().map(Terms.PLAIN::withUnit).orElse(Terms.PLAIN);
    }

    private static Terms terms(Format.Answers answers) {
        Terms terms = answers.unit().map(Terms.PLAIN::withUnit).orElse(Terms.PLAIN);
        return answers.rounded()
                .map(rounded -> terms.withPlaces(rounded.places()).withRounding(Rounding.HALF_UP))
                .orElse(terms);
    }

    private BigDecimal number(int digits, int places) {
        return draw.decimal(digits, places);
    }
}
