package tamabako.problems.setting;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tamabako.problems.Problem;
import tamabako.problems.grade.Format;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.story.StoryMade;
import tamabako.problems.story.StoryMaker;

/// Word problems of a grade.
///
/// @param count how many
record StoryBatch(Format.Stories format, int count) implements BatchMaker {

    /// Stories with a sum that was set already, or with the same sum as another, are told again
    /// this often.
    private static final int TRIES = 100;

    @Override
    public Pieces make(long seed, Sums taken) {
        Draws draws = new Draws(seed);
        Set<Problem> avoided = Set.of();
        for (int i = 0; i < TRIES; i++) {
            switch (StoryMaker.make(grade(), count, draws.bits(), avoided)) {
                case StoryMade.Found(List<Problem> problems, _) -> {
                    Sums seen = taken.copy();
                    if (problems.stream().allMatch(seen::add)) {
                        problems.forEach(taken::add);
                        return new Pieces.Found(
                                problems.stream().map(story -> Piece.of(story, "story")).toList());
                    }
                    avoided = new HashSet<>(taken.asSet());
                }
                case StoryMade.Impossible(var reason) -> {
                    return new Pieces.None(new Lack.NoSuch(reason));
                }
                case StoryMade.NotFound(var reason) -> {
                    return new Pieces.None(new Lack.NoSuch(reason));
                }
            }
        }
        return new Pieces.None(new Lack.TooFewNew(0, count));
    }

    /// The grade whose templates tell the stories of this level: its number; for dan those of the
    /// first grade.
    private int grade() {
        String number = format.level().replaceAll("\\D", "");
        if (number.isEmpty() || number.length() > 3) {
            return format.level().equals("dan") ? 1 : 0;
        }
        return Integer.parseInt(number);
    }
}
