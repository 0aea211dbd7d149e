package tamabako.insight.mastery;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Function;
import tamabako.frame.words.Languages;

/// Writes what a pupil has mastered as JSON, the plain format of `mastery`, told in
/// docs/mastery.md. Rates have three digits; chances and numbers of slips four places.
public final class PupilMasteryJson {

    private static final MathContext RATE = new MathContext(3);

    private static final List<MasteryWords> WORDS =
            Languages.all().stream().map(MasteryWords::of).toList();

    private PupilMasteryJson() {}

    /// One pupil's mastery as one object; `pupil` is left out where it is empty.
    public static ObjectNode of(String pupil, PupilMastery mastery) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (!pupil.isEmpty()) {
            node.put("pupil", pupil);
        }
        node.put("work", mastery.manner().word());
        node.put("answers", mastery.answers());
        node.put("wrong", mastery.wrong());
        node.put("notRead", mastery.notRead());
        ArrayNode moves = node.putArray("moves");
        mastery.moves().forEach(move -> moves.add(of(move)));
        ArrayNode skills = node.putArray("skills");
        mastery.skills().forEach(skill -> skills.add(of(skill)));
        ArrayNode kinds = node.putArray("kinds");
        mastery.kinds().forEach(kind -> kinds.add(of(kind)));
        ArrayNode cells = node.putArray("table");
        mastery.cells().stream()
                .filter(cell -> cell.met() > 0)
                .forEach(cell -> cells.add(of(cell)));
        return node;
    }

    private static ObjectNode of(MoveMastery mastery) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("move", mastery.move().word());
        node.put("steps", mastery.steps());
        node.put("slips", places(mastery.slips()));
        if (mastery.isKnown()) {
            node.put("rate", rate(mastery.rate()));
            node.put("low", rate(mastery.low()));
            node.put("high", rate(mastery.high()));
            node.put("usual", rate(mastery.usual()));
            node.put("mark", rate(mastery.mark()));
            node.put("good", places(mastery.good()));
        }
        says(node, mastery.statement(), mastery.problemsNeeded(), words -> words.say(mastery));
        return node;
    }

    private static ObjectNode of(SkillMastery mastery) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("skill", mastery.skill().word());
        node.put("times", mastery.times());
        node.put("slips", places(mastery.slips()));
        node.put("rate", rate(mastery.rate()));
        node.put("low", rate(mastery.low()));
        node.put("high", rate(mastery.high()));
        node.put("usual", rate(mastery.usual()));
        node.put("mark", rate(mastery.mark()));
        node.put("good", places(mastery.good()));
        says(node, mastery.statement(), mastery.problemsNeeded(), words -> words.say(mastery));
        return node;
    }

    private static ObjectNode of(KindMastery mastery) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("kind", mastery.kind());
        node.put("answers", mastery.answers());
        node.put("right", mastery.right());
        node.put("chance", places(mastery.chance()));
        node.put("low", places(mastery.low()));
        node.put("high", places(mastery.high()));
        node.put("good", places(mastery.good()));
        says(node, mastery.statement(), mastery.problemsNeeded(), words -> words.say(mastery));
        return node;
    }

    private static void says(
            ObjectNode node,
            Statement statement,
            OptionalInt problems,
            Function<MasteryWords, String> said) {
        node.put("says", statement.word());
        problems.ifPresent(number -> node.put("problemsNeeded", number));
        ObjectNode say = node.putObject("say");
        WORDS.forEach(words -> say.put(words.language().toLanguageTag(), said.apply(words)));
    }

    private static ObjectNode of(CellMastery cell) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("held", cell.cell().held());
        node.put("digit", cell.cell().digit());
        node.put("met", cell.met());
        node.put("slips", places(cell.slips()));
        return node;
    }

    private static BigDecimal places(double number) {
        return new BigDecimal(String.format(Locale.ROOT, "%.4f", number));
    }

    private static BigDecimal rate(double rate) {
        return new BigDecimal(new BigDecimal(rate).round(RATE).toPlainString());
    }
}
