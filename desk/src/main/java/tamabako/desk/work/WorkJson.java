package tamabako.desk.work;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import tamabako.frame.Fingering;
import tamabako.frame.Frame;
import tamabako.problems.Answer;
import tamabako.problems.json.ProblemJson;

/// A worked sum as JSON, the keys always in the same order.
///
/// `states` are the digits of all rods from left to right, before the first step of the work and
/// after each; the operands are set already. `rests` are those states at which a handbook prints
/// the frame. `setting` are the steps that set the operands, from a cleared frame. A `rod` is the
/// power of ten that it holds, counted from the unit rod, which is the `unit`th from the left.
///
/// `remainder` is there where something may be left; `loan` names the rod that a total below zero
/// is lent from, where the answer is read by complements; `places` are the decimal places asked
/// for.
public final class WorkJson {

    private WorkJson() {}

    /// The worked sum as a JSON object.
    public static ObjectNode of(Worked worked) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.set("problem", ProblemJson.write(worked.problem()));
        outcome(worked, json);
        json.put("frame", worked.frameWord());
        json.put("rods", worked.start().rods().size());
        json.put("unit", worked.unit().fromLeft());
        json.put("unitLetter", worked.unit().letter());
        json.set("states", texts(Worked.states(worked.working().trace())));
        List<Frame> rests = worked.working().trace().rests();
        json.set("rests", texts(rests.stream().map(Frame::digits).toList()));
        Fingering fingering = worked.habits().fingering();
        json.set("setting", StepJson.all(worked.working().setting(), fingering));
        json.set("steps", StepJson.all(worked.working().trace(), fingering));
        return json;
    }

    private static void outcome(Worked worked, ObjectNode json) {
        Answer answer = worked.answer();
        json.put("answer", answer.figures());
        answer.remainder().ifPresent(left -> json.put("remainder", left.toPlainString()));
        worked.problem().terms().places().ifPresent(places -> json.put("places", places));
        worked.working().outcome().loan().ifPresent(rod -> json.put("loan", rod));
    }

    private static ArrayNode texts(List<String> texts) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        texts.forEach(array::add);
        return array;
    }
}
