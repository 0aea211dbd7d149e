package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.setting.FormPool.Stretch;

/// Keeps the customs of a section while its pieces are swapped: no form misses more of them than
/// the drafts did that the search began with.
final class FormCustoms implements FormRule {

    private final FormPool pool;
    private final List<Optional<Balance.Look>> columns = new ArrayList<>();
    private final List<Optional<FactorBalance.Look>> factors = new ArrayList<>();
    private final double[] allowed;

    FormCustoms(FormPool pool, List<List<Integer>> start) {
        this.pool = pool;
        for (Piece piece : pool.pieces()) {
            Problem problem = piece.problems().getFirst();
            boolean single = piece.pad().isEmpty();
            columns.add(
                    problem instanceof Column column && single
                            ? Optional.of(new Balance.Look(column))
                            : Optional.empty());
            factors.add(
                    problem instanceof Product || problem instanceof Quotient
                            ? Optional.of(new FactorBalance.Look(problem))
                            : Optional.empty());
        }
        allowed = new double[pool.seats()];
        for (List<Integer> form : start) {
            int[] seats = form.stream().mapToInt(Integer::intValue).toArray();
            for (int seat = 0; seat < seats.length; seat++) {
                double missed = missed(seats, seat);
                allowed[seat] = Math.max(allowed[seat], missed);
            }
        }
    }

    @Override
    public boolean allows(int[] form, int seat) {
        return missed(form, seat) <= allowed[seat];
    }

    /// What the batch of `seat` misses of its customs.
    private double missed(int[] form, int seat) {
        Stretch batch = pool.stretch(seat);
        List<Balance.Look> rows = new ArrayList<>();
        List<FactorBalance.Look> numbers = new ArrayList<>();
        for (int i = batch.from(); i < batch.to(); i++) {
            columns.get(form[i]).ifPresent(rows::add);
            factors.get(form[i]).ifPresent(numbers::add);
        }
        return Balance.missed(rows) + FactorBalance.missed(numbers);
    }
}
