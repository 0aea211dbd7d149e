package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Signs;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;

/// The beginners' ladder goes up by technique, in the order in which they are taught
/// (aoba.keisan.ac/?page_id=1326), and its columns can be made.
class FirstStepsTest {

    private static final List<Grade> STEPS = Ladders.ladder("first-steps").orElseThrow().grades();

    @Test
    void theTechniquesComeOneAfterAnother() {
        Set<Technique> known = new HashSet<>();
        for (Grade step : STEPS) {
            Set<Technique> here = new HashSet<>();
            for (Format.Columns columns : columns(step)) {
                here.addAll(columns.beadwork().allowed());
            }
            assertThat(here).as(step.id()).containsAll(known);
            assertThat(here.size()).as(step.id()).isLessThanOrEqualTo(known.size() + 1);
            known.addAll(here);
        }
        assertThat(known).containsExactlyInAnyOrder(Technique.values());
    }

    @Test
    void aNewTechniqueIsAskedForInEveryColumn() {
        Set<Technique> known = new HashSet<>(Set.of(Technique.DIRECT));
        for (Grade step : STEPS) {
            for (Format.Columns columns : columns(step)) {
                Set<Technique> fresh = new HashSet<>(columns.beadwork().allowed());
                fresh.removeAll(known);
                assertThat(columns.beadwork().required()).as(step.id()).containsAll(fresh);
            }
            columns(step).forEach(columns -> known.addAll(columns.beadwork().allowed()));
        }
    }

    @Test
    void everySheetHas20ProblemsOf5Points() {
        assertThat(STEPS).hasSize(13);
        for (Grade step : STEPS) {
            assertThat(Shipped.counts(step)).containsExactly("practice 20x5");
        }
    }

    @Test
    void theColumnsOfEveryStepCanBeMade() {
        for (Grade step : STEPS) {
            for (Batch batch : step.sections().getFirst().batches()) {
                if (batch.format() instanceof Format.Columns columns) {
                    Made made = Maker.make(wish(columns), batch.count(), 1);
                    assertThat(made).as("%s %s", step.id(), columns).isInstanceOf(Made.Found.class);
                }
            }
        }
    }

    private static List<Format.Columns> columns(Grade step) {
        return step.sections().getFirst().batches().stream()
                .map(Batch::format)
                .filter(Format.Columns.class::isInstance)
                .map(Format.Columns.class::cast)
                .toList();
    }

    private static ColumnWish wish(Format.Columns columns) {
        Signs signs = columns.signs();
        return ColumnWish.of(columns.lengths().rows(), 1)
                .withDigits(columns.lengths().digits().least(), columns.lengths().digits().most())
                .withMinusRows(signs.minusRows().least())
                .allowing(columns.beadwork().allowed())
                .requiring(columns.beadwork().required());
    }
}
