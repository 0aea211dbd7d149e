package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import tamabako.problems.Problem;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.setting.FormSplit.Split;

/// Sets equal forms of one paper: each keeps the grade's table and the customs of its maker, no sum
/// stands in two of them, and they take as many strokes, as long, and as many steps by each
/// technique.
///
/// More drafts are made than there are forms; then problems of one sort change places, between
/// forms and with the drafts left over, until all forms are equal or no more is gained.
public final class PaperForms {

    /// Swaps tried for every seat of all forms.
    private static final int SWAPS_A_SEAT = 4_000;

    /// Drafts that are left over, besides one for every two forms.
    private static final int LEAST_SPARES = 3;

    private final PaperMaker maker;
    private final List<FormFeature> features;

    private PaperForms(PaperMaker maker, List<FormFeature> features) {
        this.maker = maker;
        this.features = List.copyOf(features);
    }

    /// Forms of the papers of `maker`, equal in strokes, seconds and steps by each technique.
    public static PaperForms of(PaperMaker maker) {
        return new PaperForms(maker, FormFeature.usual());
    }

    /// The same forms, equal in these features, the most important first.
    public PaperForms equalIn(List<FormFeature> changed) {
        return new PaperForms(maker, changed);
    }

    /// As many forms as `ids` has names, drawn from `seed`, without any sum of `leftOut`.
    ///
    /// @param ids one or more
    public FormsMade make(List<PaperId> ids, long seed, Collection<? extends Problem> leftOut) {
        Draws draws = new Draws(seed);
        Sums taken = new Sums(leftOut);
        List<PaperDraft> drafts = new ArrayList<>();
        for (int i = 0; i < ids.size() + spares(ids.size()); i++) {
            switch (maker.draft(draws.bits(), taken)) {
                case Drafted.Found(PaperDraft draft) -> drafts.add(draft);
                case Drafted.None(PaperMade.Reason reason) -> {
                    if (i < ids.size()) {
                        return new FormsMade.NotMade(ofForms(reason, i, ids.size()));
                    }
                }
            }
        }
        List<Paper> papers = papers(ids, split(drafts, ids.size(), draws.bits()));
        return new FormsMade.Found(papers, FormReport.of(papers), seed);
    }

    /// Where the first forms took all new problems of a section, what helps is fewer forms.
    private static PaperMade.Reason ofForms(PaperMade.Reason reason, int made, int asked) {
        return made == 0
                ? reason
                : switch (reason) {
                    case PaperMade.Reason.TooFewNew(String section, _, _) ->
                            new PaperMade.Reason.TooFewForms(section, made, asked);
                    case PaperMade.Reason.NoSuchProblems _, PaperMade.Reason.TooFewForms _ ->
                            reason;
                };
    }

    private static int spares(int forms) {
        return forms == 1 ? 0 : LEAST_SPARES + forms / 2;
    }

    private List<PaperDraft> split(List<PaperDraft> drafts, int forms, long seed) {
        if (forms == 1) {
            return drafts;
        }
        FormPool pool = new FormPool(drafts);
        List<List<Integer>> start = pool.start(forms);
        FormRule customs = customs(pool, start);
        Split split = new Split(start, Double.POSITIVE_INFINITY);
        for (List<Watch> watched : stages(drafts.getFirst())) {
            if (split.worst() > 1) {
                List<Candidate> candidates = pool.candidates(watched);
                FormGoal goal = goal(candidates, watched, drafts.size());
                split =
                        new FormSplit(candidates, goal, customs)
                                .from(split.forms(), seed, SWAPS_A_SEAT * forms * pool.seats());
            }
        }
        return split.forms().stream().map(pool::draft).toList();
    }

    private FormRule customs(FormPool pool, List<List<Integer>> start) {
        return switch (maker.customs()) {
            case KEPT -> new FormCustoms(pool, start);
            case LEFT_OUT -> FormRule.NONE;
        };
    }

    /// What is watched: everything; where that cannot be had, what was asked for in the whole
    /// paper; and where not even that can, the first two of it, strokes and seconds as a rule.
    private List<List<Watch>> stages(PaperDraft draft) {
        List<Watch> whole = Watch.whole(features);
        return List.of(
                Watch.all(features, draft), whole, whole.subList(0, Math.min(2, whole.size())));
    }

    /// The mean of all drafts.
    private static FormGoal goal(List<Candidate> candidates, List<Watch> watched, int drafts) {
        List<Double> totals = new ArrayList<>();
        List<Double> tolerances = new ArrayList<>();
        for (int i = 0; i < watched.size(); i++) {
            int feature = i;
            double mean =
                    candidates.stream().mapToDouble(one -> one.feature(feature)).sum() / drafts;
            totals.add(watched.get(i).feature().goal(mean));
            tolerances.add(watched.get(i).feature().tolerance(mean));
        }
        return new FormGoal(totals, tolerances);
    }

    private List<Paper> papers(List<PaperId> ids, List<PaperDraft> drafts) {
        List<Paper> papers = new ArrayList<>();
        for (int form = 0; form < ids.size(); form++) {
            papers.add(maker.paper(drafts.get(form), ids.get(form), form + 1));
        }
        return papers;
    }
}
