package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Pad;
import tamabako.problems.Problem;
import tamabako.problems.grade.Section;

/// A section of a paper before its problems are numbered.
///
/// @param batches the pieces of each batch, in their order
/// @param order for each place on the paper the number of the piece that stands there, counted over
///   all batches
record SectionDraft(Section section, List<List<Piece>> batches, List<Integer> order) {

    SectionDraft {
        batches = batches.stream().map(List::copyOf).toList();
        order = List.copyOf(order);
    }

    /// All pieces, batch by batch.
    List<Piece> pieces() {
        return batches.stream().flatMap(List::stream).toList();
    }

    /// All problems, batch by batch.
    List<Problem> problems() {
        return pieces().stream().flatMap(piece -> piece.problems().stream()).toList();
    }

    /// The same section with other pieces, as many in each batch.
    SectionDraft with(List<Piece> changed) {
        List<List<Piece>> dealt = new ArrayList<>();
        int from = 0;
        for (List<Piece> batch : batches) {
            dealt.add(changed.subList(from, from + batch.size()));
            from += batch.size();
        }
        return new SectionDraft(section, dealt, order);
    }

    /// The section with its problems numbered from `first`.
    PaperSection numbered(int first) {
        List<Piece> pieces = pieces();
        List<Problem> problems = new ArrayList<>();
        for (int place : order) {
            for (Problem problem : pieces.get(place).problems()) {
                String number = Integer.toString(first + problems.size());
                problems.add(Retold.in(section, problem.withId(number)));
            }
        }
        Optional<Pad> pad = pieces.stream().flatMap(piece -> piece.pad().stream()).findFirst();
        return new PaperSection(section, problems, pad);
    }
}
