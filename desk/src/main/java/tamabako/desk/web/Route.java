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
/// figures or hyphens. A route is for teachers unless it says otherwise with [#forWhom].
public final class Route {

    private static final Pattern NAME = Pattern.compile("\\{([a-z]+)}");

    private final Verb verb;
    private final Pattern pattern;
    private final String address;
    private final Access access;
    private final Function<Request, Reply> answering;

    private Route(Verb verb, String address, Access access, Function<Request, Reply> answering) {
        this.verb = verb;
        this.address = address;
        this.pattern = compile(address);
        this.access = access;
        this.answering = answering;
    }

    /// A page to look at.
    public static Route get(String pattern, Function<Request, Reply> answering) {
        return new Route(Verb.GET, pattern, Access.TEACHER, answering);
    }

    /// A form to send.
    public static Route post(String pattern, Function<Request, Reply> answering) {
        return new Route(Verb.POST, pattern, Access.TEACHER, answering);
    }

    /// The same route for someone else than teachers.
    ///
    /// @param least the least that someone must be to use it
    public Route forWhom(Access least) {
        return new Route(verb, address, least, answering);
    }

    /// Whom it is for; teachers where nothing else was said.
    public Access access() {
        return access;
    }

    /// The pattern of its address, as it was given.
    public String address() {
        return address;
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
