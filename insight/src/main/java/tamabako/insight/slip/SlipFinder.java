package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Attempt;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.marking.Mark;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;

/// Finds the slips that may stand behind an answer.
///
/// Of a wrong answer a, the chance under a pupil's rates is `P0 * (S1 + S2 + S3) + eps * B(a)`:
/// `P0` is the chance that nothing else slips; `S1` are the single slips that lead to a, `S2` pairs
/// of slips in the work, or three where no two do, `S3` a slip in the work that a slip of the
/// pencil made worse; `eps` is the share of answers that no known slip stands behind, and `B`
/// spreads those evenly over the answers of the same length. Each slip's share is its part of that
/// sum.
public final class SlipFinder {

    private final Rates rates;
    private final Rates inMind;

    /// A finder that weighs slips on the frame by `rates`, and those of mental and called work by
    /// the shipped rates for them.
    public SlipFinder(Rates rates) {
        this(rates, Rates.shippedInMind());
    }

    /// A finder that weighs slips on the frame by `rates`, and those of mental and called work by
    /// `inMind`.
    public SlipFinder(Rates rates, Rates inMind) {
        this.rates = rates;
        this.inMind = inMind;
    }

    /// The rates that slips on the frame are weighed by.
    public Rates rates() {
        return rates;
    }

    private Rates rates(EventTable table) {
        return table.inMind() ? inMind : rates;
    }

    /// What `written`, the answer as the pupil wrote it, tells. Its value counts, not its form.
    /// What is no number has no known slip, and neither has a right quotient with a wrong
    /// remainder.
    public Finding find(Problem problem, String written) {
        return find(EventTable.of(problem), written);
    }

    /// The same for a problem whose slips are listed already.
    public Finding find(EventTable table, String written) {
        return read(table, written)
                .map(read -> finding(table, read, weigh(table, read)))
                .orElseGet(() -> Finding.right(table.answer().toPlainString()));
    }

    /// What an attempt tells: its running totals count as well where there are any.
    public Finding find(EventTable table, Attempt attempt) {
        return diagnose(table, attempt).finding();
    }

    /// What an attempt tells, in numbers: its running totals count as well where there are any.
    public Diagnosis diagnose(EventTable table, Attempt attempt) {
        return parts(table, attempt)
                .map(parts ->
                        new Diagnosis(
                                finding(table, read(table, attempt.answer()).orElseThrow(), parts),
                                slips(parts),
                                occasions(table),
                                parts.all()))
                .orElseGet(() -> diagnose(table, attempt.answer()));
    }

    /// The slips of a wrong answer with running totals, part by part; empty where there are none.
    Optional<WeighedParts> parts(EventTable table, Attempt attempt) {
        if (!(table.problem() instanceof Column column) || table.inMind()) {
            return Optional.empty();
        }
        Optional<Subtotals> subtotals = Subtotals.of(column, attempt.subtotals());
        Optional<BigDecimal> wrong =
                read(table, attempt.answer()).filter(read -> read.compareTo(table.answer()) != 0);
        return subtotals.isEmpty() || wrong.isEmpty()
                ? Optional.empty()
                : Optional.of(new WeighedParts(subtotals.get(), wrong.get(), rates))
                        .filter(WeighedParts::tells);
    }

    /// What `written` tells, in numbers.
    public Diagnosis diagnose(EventTable table, String written) {
        Optional<BigDecimal> wrong = read(table, written);
        Counts occasions = occasions(table);
        if (wrong.isEmpty()) {
            Finding right = Finding.right(table.answer().toPlainString());
            return new Diagnosis(right, Counts.none(), occasions, table.nothing(rates(table)));
        }
        Weighing weighing = weigh(table, wrong.get());
        Finding finding = finding(table, wrong.get(), weighing);
        return new Diagnosis(finding, slips(weighing), occasions, weighing.all());
    }

    /// What `written` says about the rates, before any are known; empty if it is no number, for
    /// then it says nothing.
    public static Optional<Evidence> evidence(EventTable table, String written) {
        return switch (Marker.mark(table.problem(), written, WritingRules.EASY)) {
            case Mark.Right _, Mark.WrongForm _ -> Optional.of(Evidence.right(table));
            case Mark.Wrong(BigDecimal read, _) ->
                    Optional.of(Evidence.wrong(Explanations.of(table, read), read));
            case Mark.Empty _, Mark.Unclear _ -> Optional.empty();
        };
    }

    /// The number that was written, if it is one.
    static Optional<BigDecimal> number(EventTable table, String written) {
        return switch (Marker.mark(table.problem(), written, WritingRules.EASY)) {
            case Mark.Right _, Mark.WrongForm _ -> Optional.of(table.answer());
            case Mark.Wrong(BigDecimal read, _) -> Optional.of(read);
            case Mark.Empty _, Mark.Unclear _ -> Optional.empty();
        };
    }

    /// The number that was written; empty if it is right. What is no number counts as one that no
    /// slip leads to.
    private static Optional<BigDecimal> read(EventTable table, String written) {
        return switch (Marker.mark(table.problem(), written, WritingRules.EASY)) {
            case Mark.Right _, Mark.WrongForm _ -> Optional.empty();
            case Mark.Wrong(BigDecimal read, _) -> Optional.of(read);
            case Mark.Empty _, Mark.Unclear _ -> Optional.of(table.answer());
        };
    }

    private Weighing weigh(EventTable table, BigDecimal read) {
        return new Weighing(Explanations.of(table, read), read, rates(table));
    }

    private Finding finding(EventTable table, BigDecimal read, Weighed weighing) {
        List<Slip> slips =
                new Ranking(weighing, table.places(), read.subtract(table.answer())).slips();
        return new Finding(
                false,
                table.answer().toPlainString(),
                1 - weighing.unexplained(),
                slips,
                weighing.two(),
                weighing.three());
    }

    private static Counts slips(Weighed weighing) {
        double[] kinds = new double[SlipKind.values().length];
        double[] moves = new double[Move.values().length];
        for (int i = 0; i < weighing.size(); i++) {
            kinds[Code.way(weighing.code(i)).kind().index()] += weighing.made(i);
            int move = Code.moveNumber(weighing.code(i));
            if (move > 0) {
                moves[move - 1] += weighing.made(i);
            }
        }
        kinds[SlipKind.NONE_KNOWN.index()] = weighing.unexplained();
        return new Counts(kinds, moves);
    }

    private static Counts occasions(EventTable table) {
        double[] kinds = new double[SlipKind.values().length];
        double[] moves = new double[Move.values().length];
        for (SlipKind kind : SlipKind.values()) {
            kinds[kind.index()] = table.occasions(kind);
        }
        for (Move move : Move.values()) {
            moves[move.index()] = table.steps(move);
        }
        return new Counts(kinds, moves);
    }
}
