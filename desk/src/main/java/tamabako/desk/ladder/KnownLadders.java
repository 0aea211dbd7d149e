package tamabako.desk.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.LadderFile;
import tamabako.problems.grade.file.LadderTexts;
import tamabako.problems.grade.file.Ladders;
import tamabako.records.OwnLadder;
import tamabako.records.OwnLadders;

/// The ladders that the desk knows: those that are shipped, then the teacher's own.
public final class KnownLadders {

    private final OwnLadders own;

    /// @param own the teacher's own ladders
    public KnownLadders(OwnLadders own) {
        this.own = own;
    }

    /// A ladder with its file.
    ///
    /// @param yaml the text of its file
    /// @param isOwn whether it is the teacher's own
    public record Known(Ladder ladder, String yaml, boolean isOwn) {}

    /// All of them, in the order in which they are offered. An own ladder whose file can no longer
    /// be read is left out.
    public List<Known> all() {
        List<Known> all = new ArrayList<>();
        Ladders.shipped().forEach(ladder -> all.add(shipped(ladder)));
        own.all().forEach(kept -> read(kept).ifPresent(all::add));
        return all;
    }

    /// The ladder that goes by `id`, if there is one.
    public Optional<Known> find(String id) {
        return Ladders.ladder(id)
                .map(KnownLadders::shipped)
                .or(() -> own.find(id).flatMap(KnownLadders::read));
    }

    private static Known shipped(Ladder ladder) {
        return new Known(ladder, LadderTexts.text(ladder.id()), false);
    }

    private static Optional<Known> read(OwnLadder kept) {
        return LadderFile.read(kept.id(), kept.yaml()) instanceof LadderFile.Read(Ladder ladder)
                ? Optional.of(new Known(ladder, kept.yaml(), true))
                : Optional.empty();
    }
}
