package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.setting.PublishedPapers.Line;

/// Checks a paper against the published tables, with a table and arithmetic of its own.
final class PaperChecker {

    private final Paper paper;
    private final List<Line> lines;
    private final Complaints complaints = new Complaints();
    private final Complaints each = new Complaints();
    private final Complaints customs = new Complaints();

    private PaperChecker(Paper paper) {
        this.paper = paper;
        this.lines = PublishedPapers.of(paper.ladder(), paper.grade().id());
    }

    /// The checker of `paper`, which has checked it.
    static PaperChecker of(Paper paper) {
        PaperChecker checker = new PaperChecker(paper);
        checker.check();
        return checker;
    }

    /// What is wrong with the paper; nothing where it is in order. A paper set with the customs has
    /// to keep them in each problem.
    List<String> complaints() {
        Complaints all = new Complaints();
        all.addAll(complaints.all());
        if (paper.customs() == SettersCustoms.KEPT) {
            all.addAll(each.all());
        }
        return all.all();
    }

    /// The customs of single problems that are broken, whether the paper has to keep them or not.
    List<String> customsBroken() {
        return each.all();
    }

    /// The customs of whole sections that it misses, which are kept only as far as they can be.
    List<String> customsMissed() {
        return customs.all();
    }

    private void check() {
        complaints.unless(!lines.isEmpty(), "no table for", paper.ladder(), paper.grade().id());
        for (Line line : lines) {
            if (line.kind().equals("paper")) {
                whole(line);
            } else {
                paper.sections().stream()
                        .filter(section -> section.section().id().equals(line.section()))
                        .findFirst()
                        .ifPresentOrElse(
                                section -> stretch(line, section),
                                () -> complaints.unless(false, "no section", line.section()));
            }
        }
        for (PaperSection section : paper.sections()) {
            if (section.problems().stream()
                    .allMatch(one -> one instanceof Product || one instanceof Quotient)) {
                customs.addAll(CustomChecker.ofSection(section.problems()));
            }
        }
        if (!paper.grade().id().equals("step-1")) {
            noneTwice();
        }
    }

    private void whole(Line line) {
        boolean through = line.has("through");
        int next = 1;
        List<String> asked = new ArrayList<>(line.values().keySet());
        List<String> there =
                paper.sections().stream().map(section -> section.section().id()).toList();
        complaints.unless(there.equals(asked.subList(1, asked.size())), "sections", there);
        for (PaperSection section : paper.sections()) {
            String[] counts = String.valueOf(line.value(section.section().id())).split("x", 2);
            complaints.unless(
                    counts[0].equals("" + section.problems().size()),
                    section.section().id(),
                    ":",
                    section.problems().size(),
                    "problems");
            next = through ? next : 1;
            for (Problem problem : section.problems()) {
                complaints.unless(problem.id().equals("" + next), problem.id(), "is number", next);
                next++;
                complaints.unless(
                        counts[counts.length - 1].equals("" + problem.terms().points().orElse(0)),
                        problem.id(),
                        ": points",
                        problem.terms().points());
                boolean mental = section.section().id().contains("mental");
                complaints.unless(
                        problem.terms().mode().word().equals(mental ? "mental" : "frame"),
                        problem.id(),
                        ":",
                        problem.terms().mode());
            }
        }
    }

    private void stretch(Line line, PaperSection section) {
        List<Problem> problems = section.problems();
        if (problems.size() < line.last()) {
            complaints.unless(false, line.section(), "has no number", line.last());
            return;
        }
        List<Problem> stretch = problems.subList(line.first() - 1, line.last());
        stretch.forEach(problem -> unit(line, problem));
        switch (line.kind()) {
            case "columns" -> columns(line, stretch);
            case "pad" -> pad(line, section);
            default -> {
                Class<?> kind = line.kind().equals("products") ? Product.class : Quotient.class;
                complaints.unless(
                        stretch.stream().allMatch(kind::isInstance), "not all are", line.kind());
                FactorChecker factors = FactorChecker.of(line, stretch);
                complaints.addAll(factors.complaints());
                each.addAll(factors.customsBroken());
                customs.addAll(CustomChecker.ofFactors(stretch));
            }
        }
    }

    private void unit(Line line, Problem problem) {
        String unit = problem.terms().unit().orElse("");
        String asked = line.has("unit") ? line.value("unit") : "";
        complaints.unless(unit.equals(asked), problem.id(), ": unit", unit);
    }

    private void columns(Line line, List<Problem> stretch) {
        boolean all = stretch.stream().allMatch(Column.class::isInstance);
        complaints.unless(all, "not all are columns");
        if (all) {
            List<Column> columns = stretch.stream().map(Column.class::cast).toList();
            ColumnChecker checker = ColumnChecker.of(line, columns);
            complaints.addAll(checker.complaints());
            each.addAll(checker.customsBroken());
            customs.addAll(CustomChecker.ofColumns(columns));
        }
    }

    private void pad(Line line, PaperSection section) {
        var pad = section.pad().orElseThrow();
        complaints.unless(line.allows("lines", pad.leaves().getFirst().size()), "lines of a leaf");
        pad.leaves()
                .forEach(leaf ->
                        leaf.forEach(amount ->
                                complaints.unless(
                                        line.allows("digits", DigitCount.of(amount).length()),
                                        "amount",
                                        amount)));
        for (Problem problem : section.problems()) {
            PadLine told = (PadLine) problem.terms().told().orElseThrow();
            complaints.unless(
                    line.allows("leaves", told.leaves()),
                    problem.id(),
                    ":",
                    told.leaves(),
                    "leaves");
            var sum = java.math.BigDecimal.ZERO;
            for (int leaf = told.firstLeaf(); leaf < told.firstLeaf() + told.leaves(); leaf++) {
                sum = sum.add(pad.leaves().get(leaf - 1).get(told.line() - 1));
            }
            complaints.unless(
                    sum.compareTo(problem.answer().value()) == 0, problem.id(), ": pad sum", sum);
        }
    }

    private void noneTwice() {
        Set<String> seen = new HashSet<>();
        for (Problem problem : paper.problems()) {
            String sum =
                    switch (problem) {
                        case Column column -> "" + column.rows();
                        case Product product -> product.multiplicand() + "*" + product.multiplier();
                        case Quotient quotient -> quotient.dividend() + "/" + quotient.divisor();
                        case Root root -> root.degree() + "√" + root.of();
                    };
            complaints.unless(seen.add(sum), problem.id(), ":", sum, "is there already");
        }
    }
}
