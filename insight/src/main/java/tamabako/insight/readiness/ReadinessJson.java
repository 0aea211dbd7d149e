package tamabako.insight.readiness;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import tamabako.frame.words.Languages;

/// Writes how ready a pupil is as JSON, the plain format of `ready`, told in docs/readiness.md.
/// Chances have three places, points one.
public final class ReadinessJson {

    private static final List<ReadinessWords> WORDS =
            Languages.all().stream().map(ReadinessWords::of).toList();

    private ReadinessJson() {}

    /// One pupil before several grades, as one object; `pupil` is left out where it is empty.
    ///
    /// @param answers how many answers were read
    public static ObjectNode of(String pupil, int answers, List<Readiness> grades) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (!pupil.isEmpty()) {
            node.put("pupil", pupil);
        }
        node.put("answers", answers);
        ArrayNode list = node.putArray("grades");
        grades.forEach(one -> list.add(of(one)));
        return node;
    }

    /// One grade.
    public static ObjectNode of(Readiness readiness) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("ladder", readiness.ladder());
        node.put("grade", readiness.grade().id());
        readiness
                .pass()
                .ifPresentOrElse(
                        chance -> put(node, chance), () -> node.put("needs", readiness.more()));
        if (!readiness.ranks().isEmpty()) {
            ArrayNode ranks = node.putArray("ranks");
            readiness
                    .ranks()
                    .forEach(rank ->
                            put(ranks.addObject().put("rank", rank.rank().id()), rank.chance()));
        }
        readiness.next().ifPresent(next -> node.put("next", next.id()));
        readiness.limiting().ifPresent(one -> node.put("limiting", one.section().id()));
        ArrayNode helps = node.putArray("helps");
        readiness
                .helps()
                .forEach(help ->
                        helps.addObject()
                                .put("field", help.field().word())
                                .put("way", word(help.way()))
                                .put("gain", rounded(help.gain(), 3)));
        ArrayNode sections = node.putArray("sections");
        readiness.sections().forEach(section -> put(sections.addObject(), section));
        ObjectNode says = node.putObject("says");
        WORDS.forEach(words -> {
            ArrayNode sentences = says.putArray(words.language().getLanguage());
            words.say(readiness).forEach(sentences::add);
        });
        return node;
    }

    private static void put(ObjectNode node, SectionReadiness section) {
        node.put("section", section.section().id());
        node.put("answers", section.proof().answers());
        node.put("timed", section.proof().timed());
        section.told()
                .ifPresentOrElse(
                        told -> {
                            told.enough().ifPresent(chance -> put(node, chance));
                            node.put("points", rounded(told.points(), 1));
                            node.put("timeRunsOut", rounded(told.timeRunsOut(), 3));
                        },
                        () -> node.put("needs", section.proof().more()));
    }

    private static void put(ObjectNode node, Chance chance) {
        node.put("chance", rounded(chance.likely(), 3));
        node.putArray("band").add(rounded(chance.low(), 3)).add(rounded(chance.high(), 3));
    }

    private static String word(Help.Way way) {
        return way.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static double rounded(double value, int places) {
        double unit = Math.pow(10, places);
        return Math.round(value * unit) / unit;
    }
}
