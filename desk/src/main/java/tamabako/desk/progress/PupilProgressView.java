package tamabako.desk.progress;

import java.util.List;
import tamabako.records.Pupil;

/// What the page of a pupil's progress shows.
///
/// @param group the name of the pupil's group
/// @param summary how much there is to go by, in a sentence
/// @param mastery by how the work is done: on the frame, in the head
public record PupilProgressView(
        Pupil pupil,
        String group,
        String summary,
        ReadinessPart readiness,
        List<MasteryPart> mastery,
        SlipsPart slips,
        PacePart pace,
        ExamsPart exams) {

    public PupilProgressView {
        mastery = List.copyOf(mastery);
    }

    /// Whether there is any work to go by.
    public boolean hasWork() {
        return !mastery.isEmpty();
    }
}
