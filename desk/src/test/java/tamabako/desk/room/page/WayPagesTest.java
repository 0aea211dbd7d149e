package tamabako.desk.room.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Round;
import tamabako.desk.room.Turn.Move;
import tamabako.desk.room.Way;
import tamabako.problems.Column;
import tamabako.voice.sound.CallTimes;

/// What a tablet gets whose pupil hears the numbers of a showing, or reads those of a call.
class WayPagesTest {

    @RegisterExtension final RoomDesk desk = new RoomDesk();

    private RoomState room(Round round) {
        return desk.room(round, Expected.NOBODY, 9);
    }

    private void begin(RoomState room, int problem) {
        desk.ask(room, new RoomCommand.TakeTurn(Move.BEGIN, problem, desk.millis()));
    }

    @Test
    void aTabletThatSpeaksGetsTheVoiceWhenTheTeacherBeginsAndNoNumbers() {
        for (Activity.Screen screen : Activity.Screen.values()) {
            RoomState room = room(Lesson.shown(2, screen));
            Tablet mei = desk.sit(room, "Mei");
            Tablet ren = desk.sit(room, "Ren");
            desk.ask(room, new RoomCommand.GiveWay(1, Way.SPOKEN));
            assertThat(mei.get(mei.seat + "/state").body()).contains("\"spoken\":true");
            assertThat(ren.get(ren.seat + "/state").body()).contains("\"spoken\":false");
            assertThat(mei.get(mei.seat + "/sound").statusCode()).isEqualTo(409);
            begin(room, 0);
            assertThat(mei.get(mei.seat + "/showing").body())
                    .contains("\"spoken\":true")
                    .doesNotContain("texts");
            HttpResponse<String> sound = mei.get(mei.seat + "/sound");
            assertThat(sound.headers().firstValue("Content-Type")).contains("audio/wav");
            assertThat(sound.headers().firstValue("Cache-Control")).contains("no-store");
            assertThat(sound.body()).startsWith("RIFF");
            assertThat(ren.get(ren.seat + "/sound").statusCode()).isEqualTo(409);
        }
    }

    @Test
    void numbersAreSpokenAtThePaceOfTheShowingOrAsFastAsAVoiceSaysThem() {
        Column column = (Column) Lesson.problems(1).getFirst();
        for (Locale language : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            CallTimes slow = Spoken.of(column, 3_000, language).orElseThrow().times();
            assertThat(slow.rows().get(1) - slow.rows().get(0)).isEqualTo(3, offset());
            CallTimes fast = Spoken.of(column, 100, language).orElseThrow().times();
            assertThat(fast.greatestHurry()).isEqualTo(1);
            List<Double> steps =
                    IntStream.range(1, 3)
                            .mapToObj(i -> fast.rows().get(i) - fast.rows().get(i - 1))
                            .toList();
            assertThat(steps).allMatch(step -> step > 0.6 && step < 2);
        }
    }

    private static org.assertj.core.data.Offset<Double> offset() {
        return org.assertj.core.data.Offset.offset(0.001);
    }

    @Test
    void captionsComeRowByRowToThatTabletAlone() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = desk.sit(room, "Mei");
        Tablet ren = desk.sit(room, "Ren");
        desk.ask(room, new RoomCommand.GiveWay(1, Way.CAPTIONS));
        begin(room, 0);
        assertThat(mei.get(mei.seat + "/state").body()).contains("\"rows\":[]");
        desk.ask(room, new RoomCommand.SayRow(0, 2));
        assertThat(mei.get(mei.seat + "/state").body())
                .contains("\"captions\":{\"language\":\"en-US\",\"rows\":[\"1\",\"40\"]}");
        assertThat(ren.get(ren.seat + "/state").body()).contains("\"rows\":[]");
        begin(room, 1);
        assertThat(mei.get(mei.seat + "/state").body()).contains("\"rows\":[]");
    }

    @Test
    void aPupilNeitherChoosesTheWayNorTellsRowsNorCountsHands() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = desk.sit(room, "Mei");
        begin(room, 0);
        String to = "/room/" + room.id();
        assertThat(mei.post(to + "/seat", "do", "way", "seat", "1", "way", "captions"))
                .returns(403, HttpResponse::statusCode);
        assertThat(mei.post(to + "/do", "do", "said", "problem", "0", "rows", "3"))
                .returns(403, HttpResponse::statusCode);
        assertThat(mei.post(to + "/do", "do", "hands", "call", "1", "hands", "3"))
                .returns(403, HttpResponse::statusCode);
        assertThat(desk.seat(room, 1).way()).isEqualTo(Way.CLASS);
        assertThat(desk.state(room).said()).isZero();
        assertThat(desk.state(room).hands().counted()).isEmpty();
    }
}
