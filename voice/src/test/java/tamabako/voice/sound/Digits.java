package tamabako.voice.sound;

import java.util.List;
import java.util.Map;

/// Turns heard number words back into figures, apart from the tables that say them.
final class Digits {

    private static final List<String> SMALL =
            List.of(
                    ("zero one two three four five six seven eight nine ten eleven twelve thirteen"
                                    + " fourteen fifteen sixteen seventeen eighteen nineteen")
                            .split(" ", -1));
    private static final List<String> TENS =
            List.of("- - twenty thirty forty fifty sixty seventy eighty ninety".split(" ", -1));
    private static final Map<String, Long> SCALES =
            Map.of(
                    "thousand", 1_000L,
                    "million", 1_000_000L,
                    "billion", 1_000_000_000L,
                    "trillion", 1_000_000_000_000L,
                    "quadrillion", 1_000_000_000_000_000L);
    private static final List<String> UNITS =
            List.of("- ichi ni san yon go roku nana hachi kyuu".split(" ", -1));
    private static final List<String> STEMS =
            List.of("- - ni san yon go ro nana ha kyuu".split(" ", -1));

    private Digits() {}

    static String english(String heard) {
        long total = 0;
        long group = 0;
        for (String word : heard.split(" ", -1)) {
            if (SMALL.contains(word)) {
                group += SMALL.indexOf(word);
            } else if (TENS.contains(word)) {
                group += 10L * TENS.indexOf(word);
            } else if (word.equals("hundred")) {
                group *= 100;
            } else if (SCALES.containsKey(word)) {
                total += group * SCALES.getOrDefault(word, 0L);
                group = 0;
            }
        }
        return Long.toString(total + group);
    }

    static String groups(String heard) {
        StringBuilder figures = new StringBuilder();
        String[] words = heard.split(" ", -1);
        for (int i = 0; i < words.length; i++) {
            String word = words[i];
            boolean isUnitBehind =
                    i + 1 < words.length
                            && SMALL.indexOf(words[i + 1]) >= 1
                            && SMALL.indexOf(words[i + 1]) <= 9;
            if (word.equals("oh")) {
                figures.append('0');
            } else if (word.equals("hundred")) {
                figures.append("00");
            } else if (TENS.contains(word)) {
                figures.append(TENS.indexOf(word));
                figures.append(isUnitBehind ? "" : "0");
            } else if (SMALL.contains(word)) {
                figures.append(SMALL.indexOf(word));
            }
        }
        return figures.toString();
    }

    static String japanese(String heard) {
        long total = 0;
        long group = 0;
        for (String word : heard.split(" ", -1)) {
            if (word.endsWith("cho")) {
                String tens = word.replace("cho", "");
                group += tens.endsWith("ju") ? 10L * stem(tens.replace("ju", "")) : 0;
                group += tens.equals("i") ? 1 : tens.equals("ha") ? 8 : 0;
                total += group * 1_000_000_000_000L;
                group = 0;
            } else if (word.equals("oku") || word.equals("man")) {
                total += group * (word.equals("oku") ? 100_000_000L : 10_000L);
                group = 0;
            } else if (UNITS.contains(word)) {
                group += UNITS.indexOf(word);
            } else if (word.endsWith("yaku")) {
                group += 100L * stem(word.replaceAll("p?[hbp]yaku$", ""));
            } else if (word.endsWith("sen") || word.endsWith("zen")) {
                group += 1000L * stem(word.replaceAll("[sz]en$", ""));
            } else if (word.endsWith("juu")) {
                group += 10L * stem(word.replace("juu", ""));
            }
        }
        return Long.toString(total + group);
    }

    private static int stem(String stem) {
        if (stem.isEmpty() || stem.equals("is")) {
            return 1;
        }
        for (int i = 2; i <= 9; i++) {
            if (stem.equals(UNITS.get(i)) || stem.equals(STEMS.get(i))) {
                return i;
            }
        }
        return stem.equals("has") ? 8 : 0;
    }

    /// The share of the figures of `said` that were heard: 1 less the edits between them.
    static double share(String said, String heard) {
        int[][] edits = new int[said.length() + 1][heard.length() + 1];
        for (int i = 0; i <= said.length(); i++) {
            for (int j = 0; j <= heard.length(); j++) {
                if (i == 0 || j == 0) {
                    edits[i][j] = i + j;
                } else {
                    int swap = said.charAt(i - 1) == heard.charAt(j - 1) ? 0 : 1;
                    edits[i][j] =
                            Math.min(
                                    edits[i - 1][j - 1] + swap,
                                    1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
                }
            }
        }
        return Math.max(0, 1 - edits[said.length()][heard.length()] / (double) said.length());
    }
}
