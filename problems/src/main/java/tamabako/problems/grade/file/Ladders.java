package tamabako.problems.grade.file;

import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Ladder;

/// The ladders that are shipped.
public final class Ladders {

    private Ladders() {}

    /// All of them, in the order in which they are offered.
    public static List<Ladder> shipped() {
        return Shipped.ALL;
    }

    /// The shipped ladder that goes by `id`, if there is one.
    public static Optional<Ladder> ladder(String id) {
        return shipped().stream().filter(ladder -> ladder.id().equals(id)).findFirst();
    }

    private static final class Shipped {

        static final List<Ladder> ALL = LadderTexts.names().stream().map(Shipped::read).toList();

        private static Ladder read(String name) {
            String file = LadderTexts.fileName(name);
            return switch (LadderFile.read(file, LadderTexts.text(name))) {
                case LadderFile.Read(Ladder ladder) -> ladder;
                case LadderFile.Mistaken(List<Mistake> mistakes) ->
                        throw new IllegalStateException(file + " is shipped with " + mistakes);
            };
        }
    }
}
