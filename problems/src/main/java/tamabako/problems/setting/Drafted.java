package tamabako.problems.setting;

/// What came of drafting a paper.
sealed interface Drafted {

    record Found(PaperDraft draft) implements Drafted {}

    record None(PaperMade.Reason reason) implements Drafted {}
}
