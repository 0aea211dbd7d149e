package tamabako.desk.room.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// A tablet that speaks to the desk by hand, with the one cookie of its seat.
final class Tablet {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final String desk;
    String cookie = "";
    String seat = "";

    Tablet(String desk) {
        this.desk = desk.replaceFirst("/$", "");
    }

    HttpResponse<String> get(String path) {
        return send(request(path).GET().build());
    }

    /// Sends a form of names and values in turn.
    HttpResponse<String> post(String path, String... fields) {
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < fields.length; i += 2) {
            pairs.add(fields[i] + "=" + URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return send(
                request(path)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(String.join("&", pairs)))
                        .build());
    }

    /// Sends one answer, with these fields besides.
    HttpResponse<String> answer(
            int number, int run, String problem, String written, String... more) {
        List<String> fields =
                new ArrayList<>(
                        List.of(
                                "number",
                                "" + number,
                                "run",
                                "" + run,
                                "problem",
                                problem,
                                "written",
                                written,
                                "fresh",
                                "1"));
        fields.addAll(List.of(more));
        return post(seat + "/answers", fields.toArray(String[]::new));
    }

    private HttpRequest.Builder request(String path) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(desk + path)).header("Accept-Language", "en");
        return cookie.isEmpty() ? request : request.header("Cookie", cookie);
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            HttpResponse<String> answer = CLIENT.send(request, BodyHandlers.ofString());
            Optional<String> given = answer.headers().firstValue("Set-Cookie");
            if (given.isPresent() && given.get().startsWith("seat=")) {
                cookie = given.get().split(";", 2)[0];
                seat = answer.headers().firstValue("Location").orElse("").replace("/hello", "");
            }
            return answer;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }
}
