package tamabako.desk.account;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// One browser at the desk, without its window: it keeps cookies, and sends forms as pages of the
/// desk send them.
public final class Visit {

    private static final HttpClient SENDER = HttpClient.newHttpClient();

    private final URI desk;
    private final Map<String, String> cookies = new LinkedHashMap<>();

    public Visit(String url) {
        this.desk = URI.create(url);
    }

    /// Looks at an address.
    public HttpResponse<String> get(String path) {
        return send(at(path));
    }

    /// Sends a form with these fields: name, value, name, value ...
    public HttpResponse<String> post(String path, String... fields) {
        String origin = desk.getScheme() + "://" + desk.getAuthority();
        return send(form(path, fields).header("Origin", origin));
    }

    /// Sends a form with that header in place of what a page of the desk sends.
    public HttpResponse<String> postWith(
            String header, String value, String path, String... fields) {
        return send(form(path, fields).header(header, value));
    }

    /// Sends a form as no browser does, without telling where it comes from.
    public HttpResponse<String> postFromNowhere(String path, String... fields) {
        return send(form(path, fields));
    }

    private HttpRequest.Builder form(String path, String... fields) {
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < fields.length; i += 2) {
            pairs.add(fields[i] + "=" + URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return at(path).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(String.join("&", pairs)));
    }

    private HttpRequest.Builder at(String path) {
        HttpRequest.Builder request = HttpRequest.newBuilder(desk.resolve(path));
        if (!cookies.isEmpty()) {
            List<String> pairs = new ArrayList<>();
            cookies.forEach((name, value) -> pairs.add(name + "=" + value));
            request.header("Cookie", String.join("; ", pairs));
        }
        return request;
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> reply = SENDER.send(request.build(), BodyHandlers.ofString());
            reply.headers().allValues("Set-Cookie").forEach(this::keep);
            return reply;
        } catch (IOException | InterruptedException failed) {
            throw new AssertionError(failed);
        }
    }

    private void keep(String cookie) {
        String[] pair = cookie.split(";", 2)[0].split("=", 2);
        if (cookie.contains("Max-Age=0")) {
            cookies.remove(pair[0]);
        } else {
            cookies.put(pair[0], pair[1]);
        }
    }

    /// The cookie of that name, empty where there is none.
    public String cookie(String name) {
        return cookies.getOrDefault(name, "");
    }

    /// Carries that cookie from now on.
    public Visit carrying(String name, String value) {
        cookies.put(name, value);
        return this;
    }

    /// Where a reply sends the browser, empty where it does not.
    public static String next(HttpResponse<String> reply) {
        return reply.headers().firstValue("Location").orElse("");
    }
}
