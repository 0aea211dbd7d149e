package tamabako.insight.slip;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import tamabako.frame.words.Languages;
import tamabako.frame.words.Phrases;
import tamabako.frame.words.StepWords;

/// Says slips in sentences for a teacher, in one language.
public final class SlipWords {

    /// A kind below this share is not worth a teacher's look in the headline.
    private static final double WORTH_A_LOOK = 0.05;

    /// How many other kinds the headline names.
    private static final int MOST_OTHERS = 2;

    /// A place that holds less than this part of its kind's share is one of several.
    private static final double SURE = 0.5;

    private final Locale language;
    private final Phrases phrases;
    private final StepWords frame;

    private SlipWords(Locale language) {
        this.language = language;
        this.phrases = Phrases.of(SlipWords.class, language);
        this.frame = StepWords.of(language);
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static SlipWords of(Locale locale) {
        return new SlipWords(Languages.nearest(locale));
    }

    /// The language that is spoken.
    public Locale language() {
        return language;
    }

    /// The name of a kind of slip, such as "carry left out".
    public String name(SlipKind kind) {
        return phrases.say("name." + kind.word(), Map.of());
    }

    /// One slip in a sentence: where, what, and how far off the answer is. "Row 3 or another" says
    /// that other places together are likelier than this one.
    public String say(Slip slip) {
        if (slip.kind() == SlipKind.NONE_KNOWN) {
            return phrases.say("way.none-known", Map.of());
        }
        Map<String, Object> values = new HashMap<>();
        slip.rod().ifPresent(rod -> values.put("place", frame.place(rod)));
        List<Integer> digits = slip.digits();
        if (!digits.isEmpty()) {
            values.put("first", digits.getFirst());
            values.put("second", digits.getLast());
        }
        String what = phrases.say("way." + slip.way().word(), values);
        return phrases.say(
                surelyHere(slip) ? "slip" : "slip.perhaps",
                Map.of(
                        "where", where(slip.where()),
                        "what", what,
                        "off", off(slip.difference())));
    }

    private static boolean surelyHere(Slip slip) {
        return slip.where() instanceof Where.Answer || slip.hereShare() >= SURE * slip.share();
    }

    /// The whole finding in a line: most likely this, also possible that; or between which kinds it
    /// cannot be told; or that no known slip explains the answer.
    public String headline(Finding finding) {
        return switch (finding.verdict()) {
            case RIGHT -> phrases.say("headline.right", Map.of());
            case NONE_KNOWN -> phrases.say("headline.none-known", Map.of());
            case CANNOT_TELL ->
                    phrases.say(
                            "headline.cannot-tell", Map.of("kinds", list(finding.cannotTell())));
            case LIKELY -> likely(finding);
        };
    }

    private String likely(Finding finding) {
        List<SlipKind> others =
                finding.slips().stream()
                        .skip(1)
                        .filter(slip -> slip.share() >= WORTH_A_LOOK)
                        .map(Slip::kind)
                        .limit(MOST_OTHERS)
                        .toList();
        SlipKind first = finding.slips().getFirst().kind();
        Map<String, String> values = Map.of("first", name(first), "others", list(others));
        return phrases.say(others.isEmpty() ? "headline.likely" : "headline.also", values);
    }

    private String list(List<SlipKind> kinds) {
        String between = phrases.say("between", Map.of());
        return kinds.stream().map(this::name).collect(Collectors.joining(between));
    }

    private String where(Where where) {
        return switch (where) {
            case Where.Row(int row) -> phrases.say("where.row", Map.of("row", row));
            case Where.Operand(var operand) ->
                    phrases.say("where." + operand.name().toLowerCase(Locale.ROOT), Map.of());
            case Where.PartialProduct(int first, int second) ->
                    phrases.say("where.product", Map.of("first", first, "second", second));
            case Where.Answer() -> phrases.say("where.answer", Map.of());
        };
    }

    private String off(BigDecimal difference) {
        String key = difference.signum() < 0 ? "off.small" : "off.large";
        DecimalFormatSymbols figures = DecimalFormatSymbols.getInstance(Locale.ROOT);
        String amount = new DecimalFormat("#,##0.############", figures).format(difference.abs());
        return phrases.say(key, Map.of("amount", amount));
    }
}
