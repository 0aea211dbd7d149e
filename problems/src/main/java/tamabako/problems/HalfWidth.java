package tamabako.problems;

/// Characters as they are typed with a Japanese keyboard, brought to the plain ones.
///
/// Every character becomes exactly one, so that positions stay right.
public final class HalfWidth {

    private HalfWidth() {}

    /// `written` in plain characters: full-width letters, figures and signs become half-width;
    /// every dash and the minus marks ▲ and △ become `-`; × and ✕ become `x`; ÷ becomes `/`; 、 and
    /// 。 become comma and point; ￥ becomes ¥.
    public static String of(String written) {
        StringBuilder plain = new StringBuilder(written.length());
        for (int i = 0; i < written.length(); i++) {
            plain.append(of(written.charAt(i)));
        }
        return plain.toString();
    }

    private static char of(char figure) {
        return switch (figure) {
            case '−', '‐', '‑', '‒', '–', '—', '―', 'ー', '▲', '△' -> '-';
            case '×', '✕', '✖', '＊', '*', 'ｘ', 'Ｘ', 'X' -> 'x';
            case '÷' -> '/';
            case '、', '､' -> ',';
            case '。', '｡' -> '.';
            case '￥' -> '¥';
            case '\u3000', '\u00a0', '\u2009', '\u202f', '\t' -> ' ';
            default -> figure >= '！' && figure <= '～' ? (char) (figure - '！' + '!') : figure;
        };
    }
}
