package tamabako.voice.number;

import java.util.ArrayList;
import java.util.List;

/// Japanese readings in kana: groups of four figures, each with the name of its myriad.
///
/// Sounds change where words meet: sanbyaku, roppyaku, happyaku, sanzen, hassen; before chō and kei
/// 1, 8 and 10 are cut short (itchō, hatchō, jutchō), before kei 6 and 100 as well. A thousand is
/// "sen", but "issen" where it alone stands before a myriad (issenman). 4 is yon, 7 nana, 9 kyū, as
/// callers say them so that no two figures sound alike.
public final class MyriadReading implements NumberWords {

    private static final String[] UNITS = {"", "いち", "に", "さん", "よん", "ご", "ろく", "なな", "はち", "きゅう"};
    private static final String[] HUNDREDS = {
        "", "ひゃく", "にひゃく", "さんびゃく", "よんひゃく", "ごひゃく", "ろっぴゃく", "ななひゃく", "はっぴゃく", "きゅうひゃく"
    };
    private static final String[] THOUSANDS = {
        "", "せん", "にせん", "さんぜん", "よんせん", "ごせん", "ろくせん", "ななせん", "はっせん", "きゅうせん"
    };
    private static final String[] MYRIADS = {"", "まん", "おく", "ちょう", "けい"};

    /// The myriads before which sounds are cut short.
    private static final int CHO = 3;

    private static final int KEI = 4;

    @Override
    public List<String> say(long number, Wording wording, Meeting before) {
        NumberWords.check(number);
        return switch (wording) {
            case FULL -> full(number, before);
            case FIGURES -> figures(Long.toString(number));
            case GROUPS -> throw new IllegalArgumentException("Japanese has no wording in groups.");
        };
    }

    @Override
    public List<String> figures(String digits) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < digits.length(); i++) {
            int digit = digits.charAt(i) - '0';
            words.add(digit == 0 ? "れい" : UNITS[digit]);
        }
        return words;
    }

    @Override
    public List<Wording> wordings() {
        return List.of(Wording.FULL, Wording.FIGURES);
    }

    private static List<String> full(long number, Meeting before) {
        List<String> words = new ArrayList<>();
        if (number == 0) {
            words.add("れい");
        }
        for (int myriad = MYRIADS.length - 1; myriad >= 0; myriad--) {
            int group = (int) (number / Math.powExact(10_000L, myriad) % 10_000);
            if (group > 0) {
                addGroup(words, group, myriad, before);
            }
        }
        return words;
    }

    private static void addGroup(List<String> words, int group, int myriad, Meeting before) {
        int thousands = group / 1000;
        int hundreds = group / 100 % 10;
        int tens = group / 10 % 10;
        int units = group % 10;
        if (thousands > 0) {
            words.add(group == 1000 && myriad > 0 ? "いっせん" : THOUSANDS[thousands]);
        }
        if (hundreds > 0) {
            boolean isShort = myriad == KEI && group % 100 == 0;
            words.add(isShort ? shortened(HUNDREDS[hundreds]) : HUNDREDS[hundreds]);
        }
        boolean isHard = myriad >= CHO || (myriad == 0 && before != Meeting.OPEN);
        if (tens > 0) {
            String ten = (tens == 1 ? "" : UNITS[tens]) + "じゅう";
            words.add(units == 0 && isHard ? shortened(ten) : ten);
        }
        if (units > 0) {
            boolean isShort = isHard && (units == 1 || units == 8 || (units == 6 && myriad == KEI));
            words.add(isShort ? shortened(UNITS[units]) : UNITS[units]);
        }
        if (myriad > 0) {
            words.add(MYRIADS[myriad]);
        }
    }

    /// The word with its last sound cut short: いち as いっ, じゅう as じゅっ.
    private static String shortened(String word) {
        return word.substring(0, word.length() - 1) + "っ";
    }
}
