package tamabako.desk.mark;

import java.util.List;
import java.util.Optional;
import tamabako.desk.mark.AnswerView.Likely;
import tamabako.desk.mark.AnswerView.SlipView;
import tamabako.desk.sheet.Shown;
import tamabako.desk.web.Words;
import tamabako.insight.slip.Finding;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.SlipWords;
import tamabako.problems.Problem;
import tamabako.problems.marking.Mark;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.marking.Written;
import tamabako.problems.words.ProblemWords;
import tamabako.problems.words.Sayable;
import tamabako.records.Work.MarkedAnswer;

/// Tells what became of an answer and why, in the reader's language.
final class Explaining {

    /// Slips that stand behind fewer of a hundred such answers are not listed.
    private static final int LEAST_OF_HUNDRED = 5;

    private static final int MOST_SLIPS = 4;

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    private final ProblemWords words;
    private final SlipWords slipWords;

    Explaining(Words words) {
        this.words = ProblemWords.of(words.language());
        this.slipWords = SlipWords.of(words.language());
    }

    /// The mark of an answer as it is kept, such as `wrong-form`.
    static String word(Mark mark) {
        return Sayable.word(mark.getClass());
    }

    /// What became of `answer`, which was kept with its mark.
    AnswerView explain(Problem problem, MarkedAnswer answer) {
        Mark mark = markAgain(problem, answer);
        return new AnswerView(
                problem.id(),
                Shown.line(problem),
                answer.written(),
                answer.mark(),
                Written.of(problem).in(words.language()),
                reason(mark),
                slips(problem, mark),
                Shown.work(problem));
    }

    /// The book keeps the word of a mark; the reason comes from the rules under which it was given.
    private static Mark markAgain(Problem problem, MarkedAnswer answer) {
        Mark strict = Marker.mark(problem, answer.written(), WritingRules.STRICT);
        return word(strict).equals(answer.mark())
                ? strict
                : Marker.mark(problem, answer.written(), WritingRules.EASY);
    }

    private Optional<String> reason(Mark mark) {
        return switch (mark) {
            case Mark.Right _, Mark.Empty _ -> Optional.empty();
            case Mark.Unclear unclear -> Optional.of(words.say(unclear));
            case Mark.WrongForm(_, Mark.Form form) -> Optional.of(words.say(form));
            case Mark.Wrong(_, Mark.Fault fault) ->
                    fault instanceof Mark.Fault.OtherValue
                            ? Optional.empty()
                            : Optional.of(words.say(fault));
        };
    }

    private Optional<SlipView> slips(Problem problem, Mark mark) {
        if (!(mark instanceof Mark.Wrong(var read, Mark.Fault.OtherValue _))) {
            return Optional.empty();
        }
        Finding finding = FINDER.find(problem, read.toPlainString());
        List<Likely> likely =
                finding.slips().stream()
                        .filter(slip -> slip.kind() != SlipKind.NONE_KNOWN)
                        .map(slip -> new Likely(slipWords.say(slip), ofHundred(slip.share())))
                        .filter(slip -> slip.ofHundred() >= LEAST_OF_HUNDRED)
                        .limit(MOST_SLIPS)
                        .toList();
        return Optional.of(new SlipView(slipWords.headline(finding), likely));
    }

    private static int ofHundred(double share) {
        return (int) Math.round(100 * share);
    }
}
