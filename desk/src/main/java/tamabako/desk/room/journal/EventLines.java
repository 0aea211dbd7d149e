package tamabako.desk.room.journal;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tamabako.desk.room.RoomEvent;
import tamabako.problems.words.Sayable;

/// Events as lines: `{"is":"answered","seat":3,...}`.
final class EventLines {

    private static final JsonMapper JSON =
            JsonMapper.builder().addMixIn(RoomEvent.class, Named.class).build();

    static {
        cases(RoomEvent.class)
                .map(type -> new NamedType(type, Sayable.word(type)))
                .forEach(JSON::registerSubtypes);
    }

    private static final ObjectWriter WRITER = JSON.writerFor(RoomEvent.class);
    private static final ObjectReader READER = JSON.readerFor(RoomEvent.class);

    private EventLines() {}

    private static Stream<Class<?>> cases(Class<?> type) {
        return type.isInterface()
                ? Arrays.stream(type.getPermittedSubclasses()).flatMap(EventLines::cases)
                : Stream.of(type);
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "is")
    private interface Named {}

    static String write(List<RoomEvent> events) {
        return events.stream().map(EventLines::write).collect(Collectors.joining("\n"));
    }

    static List<RoomEvent> read(String lines) {
        return lines.lines().map(EventLines::one).toList();
    }

    private static String write(RoomEvent event) {
        try {
            return WRITER.writeValueAsString(event);
        } catch (JsonProcessingException bug) {
            throw new IllegalStateException("Cannot write " + event + ".", bug);
        }
    }

    private static RoomEvent one(String line) {
        try {
            return READER.readValue(line);
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("Not an event of a room: " + line, broken);
        }
    }
}
