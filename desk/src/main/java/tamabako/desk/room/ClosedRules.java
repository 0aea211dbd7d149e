package tamabako.desk.room;

import java.util.OptionalLong;

/// What may still happen in a room that is closed: a tablet that was away hands in what it has, the
/// teacher lets it in or leaves it out, a pupil is forgotten, and at last the room goes.
record ClosedRules(RoomState room) {

    Decision decide(RoomCommand command) {
        if (room.doors() instanceof Doors.Gone) {
            return Decision.refuse(Refusal.CLOSED);
        }
        return switch (command) {
            case RoomCommand.Forget(String pupil) -> Forgetting.decide(room, pupil);
            case RoomCommand.ClearAway(long at) -> clearAway(at);
            case RoomCommand.OfPupil pupil ->
                    isWork(pupil)
                            ? new PupilRules(room).decide(pupil)
                            : Decision.refuse(Refusal.CLOSED);
            case RoomCommand.OfTeacher teacher ->
                    isAboutLateAnswers(teacher)
                            ? new TeacherRules(room).decide(teacher)
                            : Decision.refuse(Refusal.CLOSED);
            case RoomCommand.Join _, RoomCommand.AskTakeOver _, RoomCommand.TimeUp _ ->
                    Decision.refuse(Refusal.CLOSED);
        };
    }

    private static boolean isWork(RoomCommand.OfPupil command) {
        return command instanceof RoomCommand.Answer || command instanceof RoomCommand.HandIn;
    }

    private static boolean isAboutLateAnswers(RoomCommand.OfTeacher command) {
        return command instanceof RoomCommand.AdmitLate || command instanceof RoomCommand.LeaveOut;
    }

    private Decision clearAway(long at) {
        OptionalLong from = room.cleared();
        return from.isPresent() && at >= from.getAsLong()
                ? Decision.accept(new RoomEvent.Cleared())
                : Decision.refuse(Refusal.NOT_NOW);
    }
}
