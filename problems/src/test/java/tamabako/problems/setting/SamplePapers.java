package tamabako.problems.setting;

import java.util.List;
import java.util.Locale;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.words.ProblemWords;
import tamabako.testkit.Draw;

/// Papers for tests.
final class SamplePapers {

    private SamplePapers() {}

    /// The maker of a shipped grade.
    static PaperMaker maker(String ladder, String grade) {
        return PaperMaker.of(
                ladder, Ladders.ladder(ladder).orElseThrow().grade(grade).orElseThrow());
    }

    /// A name that depends on `seed`, for tests only.
    static PaperId id(long seed) {
        return PaperId.draw(new Draw(seed)::bits);
    }

    /// The paper of `seed`, which has to be there.
    static Paper paper(PaperMaker maker, long seed) {
        return switch (maker.make(id(seed), seed, List.of())) {
            case PaperMade.Found(Paper paper, _) -> paper;
            case PaperMade.NotMade(PaperMade.Reason reason) ->
                    throw new AssertionError(
                            "Seed %d: %s"
                                    .formatted(seed, ProblemWords.of(Locale.ENGLISH).say(reason)));
        };
    }
}
