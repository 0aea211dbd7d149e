package tamabako.records.demo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import tamabako.problems.Problem;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.marking.Written;
import tamabako.problems.words.Sayable;
import tamabako.records.Work.MarkedAnswer;

/// A simulated pupil: slips so often, and mostly in one way.
///
/// @param name given name
/// @param language the language that the pupil reads
/// @param slipsPerHundred wrong answers in a hundred
/// @param usual the slip that makes two wrong answers out of three
record DemoPupil(String name, Locale language, int slipsPerHundred, DemoSlip usual) {

    /// What the pupil hands in for `problems`, marked.
    List<MarkedAnswer> work(List<Problem> problems, SplittableRandom chance) {
        List<MarkedAnswer> answers = new ArrayList<>();
        for (Problem problem : problems) {
            String written = write(problem, chance);
            String mark = Sayable.word(Marker.mark(problem, written, WritingRules.EASY).getClass());
            answers.add(new MarkedAnswer(written, mark));
        }
        return answers;
    }

    private String write(Problem problem, SplittableRandom chance) {
        if (chance.nextInt(100) >= slipsPerHundred) {
            return Written.of(problem).toString();
        }
        DemoSlip[] all = DemoSlip.values();
        DemoSlip slip = chance.nextInt(3) > 0 ? usual : all[chance.nextInt(all.length)];
        BigDecimal answer = slip.answer(problem, chance);
        return answer.toPlainString();
    }
}
