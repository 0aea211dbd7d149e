package tamabako.problems.story;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads expressions such as `each * people - hall`; products and quotients bind closer.
final class ExpressionReader {

    private static final Pattern WORD =
            Pattern.compile("\\s*(?:(\\d+(?:\\.\\d+)?)|([a-z]+)|([-+*/]))\\s*");

    private final List<Expression> terms = new ArrayList<>();
    private final List<Character> signs = new ArrayList<>();

    private ExpressionReader() {}

    /// The expression, where it is one and has none but `known` names.
    static Optional<Expression> read(String text, Set<String> known) {
        ExpressionReader reader = new ExpressionReader();
        return reader.split(text, known) ? Optional.of(reader.together()) : Optional.empty();
    }

    private boolean split(String text, Set<String> known) {
        Matcher matcher = WORD.matcher(text);
        int at = 0;
        while (at < text.length() && matcher.find(at) && matcher.start() == at) {
            at = matcher.end();
            boolean sign = matcher.group(3) != null;
            if (sign != terms.size() > signs.size()) {
                return false;
            }
            if (sign) {
                signs.add(matcher.group(3).charAt(0));
            } else if (matcher.group(1) != null) {
                terms.add(new Expression.Figure(new BigDecimal(matcher.group(1))));
            } else if (known.contains(matcher.group(2))) {
                terms.add(new Expression.Named(matcher.group(2)));
            } else {
                return false;
            }
        }
        return at == text.length() && terms.size() == signs.size() + 1;
    }

    private Expression together() {
        join("*/");
        join("+-");
        return terms.getFirst();
    }

    /// Joins the terms at those signs, from the left.
    private void join(String those) {
        for (int i = 0; i < signs.size(); ) {
            if (those.indexOf(signs.get(i)) < 0) {
                i++;
                continue;
            }
            terms.set(i, new Expression.Both(signs.remove(i), terms.get(i), terms.remove(i + 1)));
        }
    }
}
