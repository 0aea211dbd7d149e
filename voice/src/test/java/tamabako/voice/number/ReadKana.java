package tamabako.voice.number;

import java.util.LinkedHashMap;
import java.util.Map;

/// Reads a number in kana back, apart from the table that says it.
final class ReadKana {

    /// Kana by kana, the longest first where one begins another.
    private static final Map<String, String> KANJI = new LinkedHashMap<>();

    static {
        String[][] table = {
            {"きゅう", "九"}, {"いち", "一"}, {"いっ", "一"}, {"さん", "三"}, {"よん", "四"},
            {"ろく", "六"}, {"ろっ", "六"}, {"なな", "七"}, {"はち", "八"}, {"はっ", "八"},
            {"じゅう", "十"}, {"じゅっ", "十"}, {"ひゃく", "百"}, {"びゃく", "百"}, {"ぴゃく", "百"},
            {"せん", "千"}, {"ぜん", "千"}, {"まん", "万"}, {"おく", "億"}, {"ちょう", "兆"},
            {"に", "二"}, {"ご", "五"}, {"れい", "〇"}
        };
        for (String[] row : table) {
            KANJI.put(row[0], row[1]);
        }
    }

    private ReadKana() {}

    /// The kanji that the kana stand for; "issen" is 千.
    static String kanji(String kana) {
        StringBuilder kanji = new StringBuilder();
        int at = 0;
        while (at < kana.length()) {
            int from = at;
            Map.Entry<String, String> word =
                    KANJI.entrySet().stream()
                            .filter(entry -> kana.startsWith(entry.getKey(), from))
                            .findFirst()
                            .orElseThrow(() ->
                                    new AssertionError("Cannot read " + kana + " at " + from));
            kanji.append(word.getValue());
            at += word.getKey().length();
        }
        return kanji.toString().replace("一千", "千");
    }

    /// The number.
    static long number(String kana) {
        long total = 0;
        long group = 0;
        long digit = 0;
        for (char kanji : kanji(kana).toCharArray()) {
            int figure = "〇一二三四五六七八九".indexOf(kanji);
            int small = "十百千".indexOf(kanji);
            int myriad = "万億兆".indexOf(kanji);
            if (figure >= 0) {
                digit = figure;
            } else if (small >= 0) {
                group += Math.max(digit, 1) * (long) Math.pow(10, small + 1);
                digit = 0;
            } else {
                total += (group + digit) * (long) Math.pow(10_000, myriad + 1);
                group = 0;
                digit = 0;
            }
        }
        return total + group + digit;
    }
}
