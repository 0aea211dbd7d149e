package tamabako.insight.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import tamabako.frame.words.Languages;
import tamabako.problems.grade.Grade;
import tamabako.problems.json.ProblemJson;

/// Writes a plan as JSON, the plain format of `plan`, told in docs/plan.md. Shares and chances have
/// two places.
public final class PlanJson {

    private static final List<PlanWords> WORDS =
            Languages.all().stream().map(PlanWords::of).toList();

    private PlanJson() {}

    /// One pupil's plan as one object; `pupil` is left out where it is empty.
    public static ObjectNode of(String pupil, Grade grade, NextPractice practice) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (!pupil.isEmpty()) {
            node.put("pupil", pupil);
        }
        node.put("grade", grade.id());
        ArrayNode reasons = node.putArray("reasons");
        for (NextPractice.Reason reason : practice.reasons()) {
            ObjectNode one = reasons.addObject();
            one.put("focus", reason.focus().word());
            one.put("problems", reason.problems());
            one.put("section", reason.section());
            if (reason.why() == NextPractice.Why.COSTS_MOST) {
                one.put("share", rounded(reason.share()));
            }
            one.put("right", rounded(reason.right()));
            ObjectNode says = one.putObject("says");
            WORDS.forEach(
                    words -> says.put(words.language().getLanguage(), words.say(reason, grade)));
        }
        ArrayNode reviews = node.putArray("reviews");
        practice.reviews().forEach(reviews::add);
        ArrayNode problems = node.putArray("problems");
        practice.items()
                .forEach(item ->
                        problems.addObject()
                                .put("focus", item.focus().word())
                                .set("problem", ProblemJson.write(item.problem())));
        return node;
    }

    private static double rounded(double value) {
        return Math.round(100 * value) / 100.0;
    }
}
