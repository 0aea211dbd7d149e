package tamabako.voice.script;

import java.util.Map;

/// Kana in Latin letters, as far as callings need them; は stands for wa in the formulae.
final class Romaji {

    private static final String[] TABLE = {
        "きゅ kyu", "じゅ ju", "ひゃ hya", "びゃ bya", "ぴゃ pya", "ちょ cho", "あ a", "い i", "う u", "え e",
        "お o", "か ka", "き ki", "く ku", "が ga", "ご go", "さ sa", "し shi", "せ se", "ぜ ze", "た ta",
        "ち chi", "て te", "で de", "な na", "に ni", "ね ne", "は ha", "ひ hi", "ま ma", "よ yo", "り ri",
        "れ re", "ろ ro", "わ wa", "ん n", "を o"
    };

    /// Words in which は is a particle.
    private static final Map<String, String> PARTICLES = Map.of("ては", "てわ", "では", "でわ");

    private Romaji() {}

    static String of(String kana) {
        String text = kana.replace(",", "");
        for (Map.Entry<String, String> particle : PARTICLES.entrySet()) {
            text = text.replace(particle.getKey(), particle.getValue());
        }
        StringBuilder romaji = new StringBuilder();
        int at = 0;
        while (at < text.length()) {
            int from = at;
            String row = row(text, from);
            boolean isShort = text.charAt(at) == 'っ';
            if (isShort) {
                romaji.append(row(text, at + 1).split(" ", -1)[1].charAt(0));
                at++;
            } else if (text.charAt(at) == ' ') {
                romaji.append(' ');
                at++;
            } else {
                String[] pair = row.split(" ", -1);
                romaji.append(pair[1]);
                at += pair[0].length();
            }
        }
        return romaji.toString();
    }

    private static String row(String text, int at) {
        for (String row : TABLE) {
            if (text.startsWith(row.split(" ", -1)[0], at)) {
                return row;
            }
        }
        char letter = text.charAt(at);
        if (letter == 'っ' || letter == ' ') {
            return "";
        }
        throw new AssertionError("Cannot read " + text + " at " + at);
    }
}
