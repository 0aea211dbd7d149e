package tamabako.desk.web;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// One address of the desk and what answers there.
///
/// A pattern such as `/sheets/{id}.pdf` has names in braces; each stands for one or more letters,
/// figures or hyphens.
public final class Route {

    private static final Pattern NAME = Pattern.compile("\\{([a-z]+)}");

    private final Verb verb;
    private final Pattern pattern;
    private final Function<Request, Reply> answering;

    private Route(Verb verb, String pattern, Function<Request, Reply> answering) {
        this.verb = verb;
        this.pattern = compile(pattern);
        this.answering = answering;
    }

    /// A page to look at.
    public static Route get(String pattern, Function<Request, Reply> answering) {
        return new Route(Verb.GET, pattern, answering);
    }

    /// A form to send.
    public static Route post(String pattern, Function<Request, Reply> answering) {
        return new Route(Verb.POST, pattern, answering);
    }

    /// What may be done here.
    public Verb verb() {
        return verb;
    }

    /// The named parts of `path`, where it is an address of this route.
    public Optional<Map<String, String>> match(String path) {
        Matcher matcher = pattern.matcher(path);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Map<String, String> parts = new HashMap<>();
        pattern.namedGroups().keySet().forEach(name -> parts.put(name, matcher.group(name)));
        return Optional.of(parts);
    }

    /// Answers.
    public Reply answer(Request request) {
        return answering.apply(request);
    }

    private static Pattern compile(String pattern) {
        Matcher names = NAME.matcher(pattern);
        StringBuilder expression = new StringBuilder();
        int at = 0;
        while (names.find()) {
            expression.append(Pattern.quote(pattern.substring(at, names.start())));
            expression.append("(?<").append(names.group(1)).append(">[A-Za-z0-9-]{1,64})");
            at = names.end();
        }
        return Pattern.compile(expression + Pattern.quote(pattern.substring(at)));
    }
}
