package tamabako.insight.pooling;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import tamabako.frame.words.Languages;
import tamabako.insight.rule.LastingRules;
import tamabako.insight.rule.RuleWords;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.SlipWords;

/// Writes what a pupil's answers show as JSON, the plain format of `slips --pupils`, told in
/// docs/slips.md. Shares, chances and numbers of slips have four places, rates three digits.
public final class PupilSlipsJson {

    private static final MathContext RATE = new MathContext(3);

    /// Kinds of which less than this was made are not listed.
    private static final double WORTH_TELLING = 0.05;

    private static final List<SlipWords> NAMES =
            Languages.all().stream().map(SlipWords::of).toList();
    private static final List<RuleWords> RULES =
            Languages.all().stream().map(RuleWords::of).toList();

    private PupilSlipsJson() {}

    /// One pupil's slips as one object; `pupil` is left out where it is empty.
    public static ObjectNode of(String pupil, PupilSlips slips) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (!pupil.isEmpty()) {
            node.put("pupil", pupil);
        }
        node.put("answers", slips.answers());
        node.put("wrong", slips.wrong());
        node.put("notRead", slips.notRead());
        slips.main().likeliest().stream()
                .findFirst()
                .filter(_ -> slips.wrong() > 0)
                .ifPresent(first -> node.set("main", of(first, slips.main().standsOut())));
        ArrayNode kinds = node.putArray("slips");
        Arrays.stream(SlipKind.values())
                .filter(kind -> slips.sum().slips().of(kind) >= WORTH_TELLING)
                .sorted(
                        Comparator.comparingDouble((SlipKind kind) -> slips.sum().slips().of(kind))
                                .reversed())
                .forEach(kind -> kinds.add(of(kind, slips)));
        rules(slips.rules(), node);
        return node;
    }

    private static ObjectNode of(MainSlip.Candidate main, boolean standsOut) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("slip", main.kind().word());
        node.put("certainty", share(main.certainty()));
        node.put("share", share(main.share()));
        node.put("standsOut", standsOut);
        name(main.kind(), node);
        return node;
    }

    private static void name(SlipKind kind, ObjectNode node) {
        say(node, NAMES, words -> words.language().toLanguageTag(), words -> words.name(kind));
    }

    private static <W> void say(
            ObjectNode node, List<W> all, Function<W, String> language, Function<W, String> said) {
        ObjectNode say = node.putObject("say");
        all.forEach(words -> say.put(language.apply(words), said.apply(words)));
    }

    private static ObjectNode of(SlipKind kind, PupilSlips slips) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("slip", kind.word());
        node.put("made", share(slips.sum().slips().of(kind)));
        node.put("occasions", share(slips.sum().occasions().of(kind)));
        node.put("rate", rate(slips.own().of(kind)));
        node.put("usual", rate(slips.usual().of(kind)));
        name(kind, node);
        return node;
    }

    private static void rules(LastingRules rules, ObjectNode node) {
        node.put("noRule", share(rules.none()));
        ArrayNode list = node.putArray("rules");
        for (LastingRules.Candidate candidate : rules.likeliest()) {
            ObjectNode one = list.addObject();
            one.put("rule", candidate.rule().word());
            one.put("chance", share(candidate.chance()));
            one.put("followed", share(candidate.followed()));
            one.put("found", candidate.chance() >= LastingRules.FOUND);
            say(
                    one,
                    RULES,
                    words -> words.language().toLanguageTag(),
                    words -> words.say(candidate.rule()));
        }
    }

    private static BigDecimal share(double share) {
        return new BigDecimal(String.format(Locale.ROOT, "%.4f", share));
    }

    private static BigDecimal rate(double rate) {
        BigDecimal rounded = new BigDecimal(rate).round(RATE);
        return new BigDecimal(rounded.toPlainString());
    }
}
