package tamabako.desk.exam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Request;
import tamabako.desk.web.Words;
import tamabako.problems.HalfWidth;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Reached;
import tamabako.problems.grade.Section;
import tamabako.records.Pupil;

/// The lines of an exam as they were typed, and what they say. A line in which nothing stands says
/// that nothing is known.
///
/// The fields of a line are `came-PUPIL`, which has a word of [Came] or `rank:` and a rank, and
/// `points-PUPIL-SECTION`.
final class ExamLines {

    /// Before the name of a rank that was reached.
    static final String RANK = "rank:";

    private final ChosenExam exam;
    private final Fields fields;
    private final Words words;
    private final Map<String, ExamOutcome> outcomes = new LinkedHashMap<>();
    private final List<String> open = new ArrayList<>();
    private final Map<String, Fault> faults = new LinkedHashMap<>();

    /// @param wrong the field that is to blame
    private record Fault(String wrong, String said) {}

    private ExamLines(ChosenExam exam, Request request) {
        this.exam = exam;
        this.fields = request.form();
        this.words = request.words();
    }

    static ExamLines read(ChosenExam exam, List<Pupil> pupils, Request request) {
        ExamLines lines = new ExamLines(exam, request);
        pupils.forEach(pupil -> lines.read(pupil.id()));
        return lines;
    }

    boolean isGood() {
        return faults.isEmpty();
    }

    /// What came of it, by the identities of the pupils.
    Map<String, ExamOutcome> outcomes() {
        return outcomes;
    }

    /// The pupils in whose line nothing stands.
    List<String> open() {
        return open;
    }

    private String points(String pupil, Section section) {
        return fields.text("points-" + pupil + "-" + section.id()).strip();
    }

    private void read(String pupil) {
        Map<String, Integer> points = new LinkedHashMap<>();
        for (Section section : exam.grade().sections()) {
            String written = HalfWidth.of(points(pupil, section));
            if (written.isEmpty()) {
                continue;
            }
            if (!written.matches("\\d{1,5}") || Integer.parseInt(written) > section.fullMarks()) {
                String name = section.name().in(words.language());
                blame(pupil, section.id(), words.say("exams.points", name, section.fullMarks()));
                return;
            }
            points.put(section.id(), Integer.parseInt(written));
        }
        String came = fields.text("came-" + pupil);
        if (came.isEmpty() && points.isEmpty()) {
            open.add(pupil);
        } else if (came.isEmpty()) {
            byPoints(pupil, points);
        } else {
            asSaid(pupil, came, points);
        }
    }

    /// Where nothing is said but the points of every section, they tell what came of it.
    private void byPoints(String pupil, Map<String, Integer> points) {
        Optional<Reached> reached = Reached.of(exam.grade(), points);
        if (reached.isEmpty()) {
            blame(pupil, "came", words.say("exams.came-missing"));
            return;
        }
        keep(
                pupil,
                reached.get().passed() ? Came.PASSED : Came.NOT_PASSED,
                reached.get().rank().map(Pass.Rank::id),
                points);
    }

    private void asSaid(String pupil, String came, Map<String, Integer> points) {
        Optional<String> rank =
                came.startsWith(RANK)
                        ? Optional.of(came.substring(RANK.length()))
                        : Optional.empty();
        Optional<Came> found = rank.isPresent() ? Optional.of(Came.PASSED) : Came.find(came);
        boolean isKnown = found.isPresent() && rank.stream().allMatch(this::isRank);
        if (!isKnown) {
            blame(pupil, "came", words.say("form.choice"));
        } else if (found.get() == Came.NOT_SAT && !points.isEmpty()) {
            blame(pupil, "came", words.say("exams.not-sat-points"));
        } else {
            keep(pupil, found.get(), rank, points);
        }
    }

    private boolean isRank(String id) {
        return exam.grade().pass() instanceof Pass.ByScore byScore
                && byScore.ranks().stream().anyMatch(rank -> rank.id().equals(id));
    }

    private void keep(String pupil, Came came, Optional<String> rank, Map<String, Integer> points) {
        outcomes.put(
                pupil,
                new ExamOutcome(
                        exam.day(), exam.ladder().id(), exam.grade().id(), came, rank, points));
    }

    private void blame(String pupil, String wrong, String said) {
        faults.put(pupil, new Fault(wrong, said));
    }

    /// The line of a pupil as it was typed.
    ExamGrid.Line asTyped(Pupil pupil) {
        Optional<Fault> fault = Optional.ofNullable(faults.get(pupil.id()));
        return new ExamGrid.Line(
                pupil,
                fields.text("came-" + pupil.id()),
                exam.grade().sections().stream()
                        .map(section -> points(pupil.id(), section))
                        .toList(),
                fault.map(Fault::said).orElse(""),
                fault.map(Fault::wrong).orElse(""));
    }
}
