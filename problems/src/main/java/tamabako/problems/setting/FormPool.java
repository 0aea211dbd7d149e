package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import tamabako.problems.effort.Effort;

/// The pieces of several drafts of one paper, to be shared out into forms: every place of every
/// batch of every section is a seat, in that order.
final class FormPool {

    /// The seats of one batch.
    ///
    /// @param section the place of its section in the paper, from 0
    /// @param from its first seat
    /// @param to the seat behind its last
    record Stretch(int section, int from, int to) {}

    private final PaperDraft first;
    private final int seats;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();

    /// @param drafts of one grade, so that all have the same seats
    FormPool(List<PaperDraft> drafts) {
        first = drafts.getFirst();
        for (int section = 0; section < first.sections().size(); section++) {
            for (List<Piece> batch : first.sections().get(section).batches()) {
                int from = stretches.size();
                Stretch stretch = new Stretch(section, from, from + batch.size());
                batch.forEach(_ -> stretches.add(stretch));
            }
        }
        seats = stretches.size();
        for (PaperDraft draft : drafts) {
            draft.sections().forEach(section -> pieces.addAll(section.pieces()));
        }
    }

    /// How many seats a form has.
    int seats() {
        return seats;
    }

    /// Every piece of every draft, seat by seat.
    List<Piece> pieces() {
        return pieces;
    }

    /// The batch that a seat is of.
    Stretch stretch(int seat) {
        return stretches.get(seat);
    }

    /// The first split: each draft as it was made, the first `forms` of them.
    List<List<Integer>> start(int forms) {
        return IntStream.range(0, forms)
                .mapToObj(form -> IntStream.range(form * seats, (form + 1) * seats))
                .map(form -> form.boxed().toList())
                .toList();
    }

    /// The pieces as candidates: of one class are those of one sort in one batch.
    List<Candidate> candidates(List<Watch> watched) {
        Map<String, Integer> classes = new HashMap<>();
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            Stretch stretch = stretch(i % seats);
            Effort effort = Effort.of(piece.problems());
            int seatClass =
                    classes.computeIfAbsent(
                            stretch.from() + " " + piece.sort(), _ -> classes.size());
            double[] features =
                    watched.stream()
                            .mapToDouble(watch -> watch.of(piece, stretch.section(), effort))
                            .toArray();
            candidates.add(Candidate.of(seatClass, features));
        }
        return candidates;
    }

    /// The draft that a form of a split is.
    PaperDraft draft(List<Integer> form) {
        List<SectionDraft> sections = new ArrayList<>();
        int seat = 0;
        for (SectionDraft section : first.sections()) {
            int size = section.order().size();
            sections.add(
                    section.with(
                            form.subList(seat, seat + size).stream().map(pieces::get).toList()));
            seat += size;
        }
        return new PaperDraft(first.grade(), sections);
    }
}
