package tamabako.voice.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Numbers by rules, as a data file gives them: `100` = `{q} hundred[ {r}]`.
///
/// A rule holds for all numbers from its own up to the next one's. `{q}` is how often its power of
/// ten goes into the number, `{r}` what is left over, `{n}` the number itself; with `{r:tail}` they
/// are said by the rules of the set `tail`. A part in brackets is said only if something is left
/// over; `[<100 and {r}]` and `[>=100 {r}]` only if what is left over is so small, or so great.
///
/// The set without a name says numbers in full. The sets `lead` and `group` say the first and every
/// further group of three figures of [Wording#GROUPS], where there are such sets; the set `figure`
/// says single figures, where they differ from the numbers 0 to 9.
public final class SpellingRules implements NumberWords {

    private static final Pattern KEY =
            Pattern.compile("(?:([a-z]+)\\.)?(\\d{1,18})(?:/(\\d{1,18}))?");
    private static final String MAIN = "";

    private final Map<String, NavigableMap<Long, Rule>> sets;

    private SpellingRules(Map<String, NavigableMap<Long, Rule>> sets) {
        this.sets = sets;
    }

    /// Reads rules.
    ///
    /// @param lines the rules by their keys: `100`, `tail.100` of a set, `80/20` where the divisor
    ///   is not the greatest power of ten
    /// @throws IllegalArgumentException if a key or a rule is none, or a number from 0 on has none
    public static SpellingRules of(Map<String, String> lines) {
        Map<String, NavigableMap<Long, Rule>> sets = new TreeMap<>();
        lines.forEach((key, text) -> {
            Matcher read = KEY.matcher(key);
            if (!read.matches()) {
                throw new IllegalArgumentException("No rule has the key \"" + key + "\".");
            }
            String set = read.group(1) == null ? MAIN : read.group(1);
            long base = Long.parseLong(read.group(2));
            long divisor = read.group(3) == null ? powerOfTen(base) : Long.parseLong(read.group(3));
            sets.computeIfAbsent(set, _ -> new TreeMap<>()).put(base, Rule.parse(text, divisor));
        });
        if (!sets.containsKey(MAIN)) {
            throw new IllegalArgumentException("There are no rules for numbers in full.");
        }
        sets.forEach((set, rules) -> {
            if (rules.firstKey() > (set.equals(MAIN) ? 0 : 1)) {
                throw new IllegalArgumentException("No rule says the first numbers of " + set);
            }
        });
        return new SpellingRules(sets);
    }

    @Override
    public List<String> say(long number, Wording wording, Meeting before) {
        NumberWords.check(number);
        return switch (wording) {
            case FULL -> words(say(MAIN, number));
            case GROUPS -> groups(number);
            case FIGURES -> figures(Long.toString(number));
        };
    }

    @Override
    public List<String> figures(String digits) {
        String set = sets.containsKey("figure") ? "figure" : MAIN;
        List<String> words = new ArrayList<>();
        for (int i = 0; i < digits.length(); i++) {
            words.addAll(words(say(set, digits.charAt(i) - '0')));
        }
        return words;
    }

    @Override
    public List<Wording> wordings() {
        return sets.containsKey("group") && sets.containsKey("lead")
                ? List.of(Wording.FULL, Wording.GROUPS, Wording.FIGURES)
                : List.of(Wording.FULL, Wording.FIGURES);
    }

    private List<String> groups(long number) {
        if (!wordings().contains(Wording.GROUPS)) {
            throw new IllegalArgumentException("This language has no wording in groups.");
        }
        if (number < 1000) {
            return words(say("lead", number));
        }
        List<String> words = new ArrayList<>(groups(number / 1000));
        words.add(BREATH);
        words.addAll(words(say("group", number % 1000)));
        return words;
    }

    /// The text of `number` by the rules of a set; a set that does not know it leaves it to the
    /// main one.
    String say(String set, long number) {
        Map.Entry<Long, Rule> rule =
                sets.getOrDefault(set, sets.getOrDefault(MAIN, new TreeMap<>())).floorEntry(number);
        return rule == null ? say(MAIN, number) : rule.getValue().say(number, this);
    }

    private static List<String> words(String text) {
        return List.of(text.strip().split("\\s+", -1));
    }

    private static long powerOfTen(long number) {
        long power = 1;
        while (power <= number / 10) {
            power *= 10;
        }
        return power;
    }
}
