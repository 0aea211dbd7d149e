package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.setting.SectionMaker.SectionDrafted;

/// Sets the papers of one grade. What the grade asks is turned into wishes once; the maker can then
/// be used for any number of papers, by one thread at a time.
///
/// ```
/// PaperMaker maker = PaperMaker.of("jcci", grade);
/// maker.make(PaperId.draw(secureBits), seed, pupilsLastProblems);
/// ```
public final class PaperMaker {

    private final String ladder;
    private final Grade grade;
    private final SettersCustoms customs;
    private final List<SectionMaker> sections;

    private PaperMaker(String ladder, Grade grade, SettersCustoms customs) {
        this.ladder = ladder;
        this.grade = grade;
        this.customs = customs;
        this.sections =
                grade.sections().stream().map(one -> new SectionMaker(one, customs)).toList();
    }

    /// A maker for the papers of `grade`, which keep the customs of setters.
    ///
    /// @param ladder the name of its ladder
    public static PaperMaker of(String ladder, Grade grade) {
        return of(ladder, grade, SettersCustoms.KEPT);
    }

    /// A maker for the papers of `grade`, with or without the customs of setters.
    ///
    /// @param ladder the name of its ladder
    public static PaperMaker of(String ladder, Grade grade, SettersCustoms customs) {
        return new PaperMaker(ladder, grade, customs);
    }

    /// A paper whose problems are drawn from `seed`: the same grade, seed and sums to leave out
    /// give the same problems on every machine. No sum stands in it twice, and none of `leftOut`,
    /// whatever they are named or answered under.
    public PaperMade make(PaperId id, long seed, Collection<? extends Problem> leftOut) {
        return switch (draft(seed, new Sums(leftOut))) {
            case Drafted.Found(PaperDraft draft) -> new PaperMade.Found(paper(draft, id, 1), seed);
            case Drafted.None(PaperMade.Reason reason) -> new PaperMade.NotMade(reason);
        };
    }

    /// A draft, its problems none of those in `taken`, to which they are added.
    Drafted draft(long seed, Sums taken) {
        Draws draws = new Draws(seed);
        List<SectionDraft> drafts = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            switch (sections.get(i).draft(draws, taken)) {
                case SectionDrafted.Found(SectionDraft draft) -> drafts.add(draft);
                case SectionDrafted.None(Lack lack) -> {
                    return new Drafted.None(lack.in(grade.sections().get(i).id()));
                }
            }
        }
        return new Drafted.Found(new PaperDraft(grade, drafts));
    }

    /// The paper that `draft` becomes under that name.
    Paper paper(PaperDraft draft, PaperId id, int form) {
        return new Paper(id.toString(), ladder, grade, form, customs, draft.numbered());
    }

    SettersCustoms customs() {
        return customs;
    }
}
