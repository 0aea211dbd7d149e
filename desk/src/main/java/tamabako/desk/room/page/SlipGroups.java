package tamabako.desk.room.page;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import tamabako.desk.room.Answered;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
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

/// Counts which slips a class made where. An answer counts for a kind of slip only where that kind
/// stands out; what cannot be told is not guessed.
final class SlipGroups {

    private static final int MOST = 8;

    /// So many answers are remembered with their slip.
    private static final int REMEMBERED = 5_000;

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    private final Map<Wrong, Optional<SlipKind>> known = new ConcurrentHashMap<>();

    private record Wrong(Problem problem, String written) {}

    private record Where(int problem, SlipKind kind) {}

    /// The groups of a round, the largest first, in the language of `words`.
    List<SlipGroup> of(RoomState room, Words words) {
        List<Problem> problems = room.current().problems();
        Map<Where, Integer> counts = new HashMap<>();
        room.seats()
                .present()
                .limit(RoomView.MOST_SHOWN)
                .forEach(seat -> count(seat, problems, counts));
        SlipWords slips = SlipWords.of(words.language());
        return counts.entrySet().stream()
                .sorted(
                        Map.Entry.<Where, Integer>comparingByValue(Comparator.reverseOrder())
                                .thenComparingInt(entry -> entry.getKey().problem())
                                .thenComparing(entry -> entry.getKey().kind()))
                .limit(MOST)
                .map(entry -> group(entry.getKey(), entry.getValue(), problems, slips))
                .toList();
    }

    private static SlipGroup group(
            Where where, int pupils, List<Problem> problems, SlipWords slips) {
        Problem problem = problems.get(where.problem());
        return new SlipGroup(pupils, slips.name(where.kind()), problem.id(), Shown.work(problem));
    }

    private void count(Seat seat, List<Problem> problems, Map<Where, Integer> counts) {
        for (int i = 0; i < problems.size(); i++) {
            Answered answer = seat.answers().get(i);
            if (answer.mark().equals("wrong")) {
                int problem = i;
                slip(new Wrong(problems.get(i), answer.written()))
                        .ifPresent(kind -> counts.merge(new Where(problem, kind), 1, Integer::sum));
            }
        }
    }

    private Optional<SlipKind> slip(Wrong wrong) {
        if (known.size() > REMEMBERED) {
            known.clear();
        }
        return known.computeIfAbsent(wrong, SlipGroups::find);
    }

    private static Optional<SlipKind> find(Wrong wrong) {
        Mark mark = Marker.mark(wrong.problem(), wrong.written(), WritingRules.EASY);
        if (!(mark instanceof Mark.Wrong(var read, Mark.Fault.OtherValue _))) {
            return Optional.empty();
        }
        Finding finding = FINDER.find(wrong.problem(), read.toPlainString());
        return finding.verdict() == Finding.Verdict.LIKELY
                ? Optional.of(finding.slips().getFirst().kind())
                        .filter(kind -> kind != SlipKind.NONE_KNOWN)
                : Optional.empty();
    }
}
