package tamabako.problems.setting;

import tamabako.problems.grade.Format;
import tamabako.problems.making.Made;

/// Word problems.
record StoryBatch(Format.Stories format, int count) implements BatchMaker {

    @Override
    public Pieces make(long seed, Sums taken) {
        return new Pieces.None(new Lack.NoSuch(new Made.Reason.NoneFound(0)));
    }
}
