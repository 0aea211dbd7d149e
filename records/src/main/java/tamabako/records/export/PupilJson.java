package tamabako.records.export;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.json.OutcomeJson;
import tamabako.problems.json.ProblemJson;
import tamabako.records.Draft;
import tamabako.records.Handout;
import tamabako.records.Pupil;
import tamabako.records.Result;
import tamabako.records.Work;

/// Writes all that the class book knows of a pupil as JSON. docs/classbook.md tells the format.
public final class PupilJson {

    /// The version of the format. Fields may come in addition without a new one.
    public static final int VERSION = 1;

    private static final JsonMapper MAPPER = new JsonMapper();
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private PupilJson() {}

    /// The whole export, readable line by line.
    ///
    /// @param at when it was asked for
    public static String write(PupilExport export, Instant at) {
        ObjectNode all = JsonNodeFactory.instance.objectNode();
        all.put("format", "tamabako-pupil")
                .put("version", VERSION)
                .put("exportedAt", at.toString());
        all.set("pupil", pupil(export));
        each(
                all.putArray("attendance"),
                export.attendance(),
                (day, node) -> node.put("day", day.day().toString()).put("how", word(day.how())));
        each(
                all.putArray("notes"),
                export.notes(),
                (note, node) ->
                        node.put("at", note.writtenAt().toString()).put("words", note.words()));
        each(all.putArray("results"), export.results(), PupilJson::result);
        each(
                all.putArray("exams"),
                export.exams(),
                (one, node) -> node.setAll(OutcomeJson.write("", one.outcome())));
        each(
                all.putArray("handouts"),
                export.handouts(),
                (one, node) -> handout(export, one, node));
        each(all.putArray("work"), export.work(), (one, node) -> work(export, one, node));
        each(all.putArray("drafts"), export.drafts(), (one, node) -> draft(export, one, node));
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(all) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("A tree can always be written.", impossible);
        }
    }

    private static ObjectNode pupil(PupilExport export) {
        Pupil pupil = export.pupil();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("id", pupil.id()).put("name", pupil.name()).put("kana", pupil.about().kana());
        pupil.about().born().ifPresent(year -> node.put("born", year.getValue()));
        export.pin().ifPresent(pin -> node.put("pin", pin));
        node.put("group", export.group())
                .put("grade", pupil.about().grade())
                .put("language", pupil.language().toLanguageTag())
                .put("rosterId", pupil.about().rosterId())
                .put("demo", pupil.demo());
        node.putObject("preferences")
                .put("noFlashing", pupil.preferences().noFlashing())
                .put("extraTimePercent", pupil.preferences().extraTime())
                .put("pacePercent", pupil.preferences().pace());
        return node;
    }

    private static void result(Result result, ObjectNode node) {
        node.put("day", result.day().toString())
                .put("kind", word(result.kind()))
                .put("name", result.name())
                .put("outcome", result.outcome());
        result.score()
                .ifPresent(score -> node.put("points", score.points()).put("of", score.most()));
    }

    private static void handout(PupilExport export, Handout handout, ObjectNode node) {
        node.put("at", handout.at().toString());
        sheet(export, handout.sheetId(), node);
        node.put("to", handout.pupilId().isPresent() ? "pupil" : "group");
    }

    private static void work(PupilExport export, Work work, ObjectNode node) {
        node.put("id", work.id()).put("at", work.handedAt().toString());
        sheet(export, work.sheetId(), node);
        seconds(work.took(), node);
        List<Problem> problems = problems(export, work.sheetId());
        ArrayNode answers = node.putArray("answers");
        for (int i = 0; i < work.answers().size(); i++) {
            Work.MarkedAnswer answer = work.answers().get(i);
            ObjectNode one = answers.addObject();
            if (i < problems.size()) {
                one.set("problem", ProblemJson.write(problems.get(i)));
            }
            one.put("answer", answer.written()).put("mark", answer.mark());
            seconds(answer.took(), one);
        }
    }

    private static void draft(PupilExport export, Draft draft, ObjectNode node) {
        sheet(export, draft.sheetId(), node);
        ArrayNode answers = node.putArray("answers");
        draft.written().forEach(answers::add);
        node.put("time", draft.took());
    }

    private static void sheet(PupilExport export, String id, ObjectNode node) {
        node.put("sheet", id).put("title", export.sheet(id).map(Sheet::title).orElse(""));
    }

    private static List<Problem> problems(PupilExport export, String sheet) {
        return export.sheet(sheet).map(Sheet::problems).orElse(List.of());
    }

    private static void seconds(Optional<Duration> took, ObjectNode node) {
        took.ifPresent(time ->
                node.put(
                        "seconds",
                        BigDecimal.valueOf(time.toMillis()).divide(THOUSAND).stripTrailingZeros()));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static <T> void each(ArrayNode array, List<T> all, BiConsumer<T, ObjectNode> writing) {
        all.forEach(one -> writing.accept(one, array.addObject()));
    }
}
