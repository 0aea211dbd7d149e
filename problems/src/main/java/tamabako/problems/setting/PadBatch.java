package tamabako.problems.setting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Column;
import tamabako.problems.Pad;
import tamabako.problems.Problem;
import tamabako.problems.grade.Format;
import tamabako.problems.making.Digits;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.pad.PadMade;
import tamabako.problems.pad.PadMaker;
import tamabako.problems.pad.PadWish;

/// Lines of a slip pad, which are set as one, for they share the pad.
record PadBatch(Format.PadLines format, int count) implements BatchMaker {

    /// Pads that have a line that was set already before it is said that there is no other.
    private static final int TRIES = 100;

    @Override
    public Pieces make(long seed, Sums taken) {
        Draws draws = new Draws(seed);
        for (int i = 0; i < TRIES; i++) {
            switch (PadMaker.make(wish(), count, draws.bits())) {
                case PadMade.Found(Pad pad, List<Problem> problems, _) -> {
                    if (problems.stream().noneMatch(taken::contains)) {
                        problems.forEach(taken::add);
                        return new Pieces.Found(List.of(piece(pad, problems)));
                    }
                }
                case PadMade.Impossible(_, var reason, _) -> {
                    return new Pieces.None(new Lack.NoSuch(reason));
                }
            }
        }
        return new Pieces.None(new Lack.TooFewNew(0, count));
    }

    private PadWish wish() {
        return new PadWish(
                format.lines(),
                format.padLeaves(),
                format.leaves(),
                new Digits(format.digits().least(), format.digits().most()),
                format.amounts().unit());
    }

    private Piece piece(Pad pad, List<Problem> problems) {
        return new Piece(
                problems.stream().map(this::withPlaces).toList(),
                Optional.of(new Pad(pad.leaves().stream().map(this::withPlaces).toList())),
                "pad");
    }

    private Problem withPlaces(Problem problem) {
        return problem instanceof Column column
                ? new Column(column.id(), withPlaces(column.rows()), column.terms())
                : problem;
    }

    private List<BigDecimal> withPlaces(List<BigDecimal> amounts) {
        return amounts.stream()
                .map(amount -> new BigDecimal(amount.unscaledValue(), format.amounts().places()))
                .toList();
    }
}
