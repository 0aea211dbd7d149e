package tamabako.problems.grade.file;

import java.util.regex.Pattern;

/// The commonest slip in YAML: a colon that parts off no key.
final class Colons {

    private static final Pattern KEY_AND_MORE = Pattern.compile("[a-z ]+\\s*(?:：\\s*|:)\\S.*");

    private Colons() {}

    /// Whether a key runs into its value, as in `time:30 min` or `time：30 min`.
    static boolean misplaced(String written) {
        return KEY_AND_MORE.matcher(written).matches() || written.endsWith("：");
    }
}
