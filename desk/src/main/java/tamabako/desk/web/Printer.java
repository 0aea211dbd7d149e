package tamabako.desk.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/// Makes a reply ready for the wire: renders its template and puts the headers on.
final class Printer {

    /// The referrer policy lets browsers tell the desk that a form comes from its own page, over
    /// plain HTTP too; others learn nothing.
    private static final Map<String, String> ALWAYS =
            Map.of(
                    "X-Content-Type-Options", "nosniff",
                    "Referrer-Policy", "same-origin",
                    "Cross-Origin-Opener-Policy", "same-origin",
                    "Cross-Origin-Embedder-Policy", "require-corp",
                    "Cross-Origin-Resource-Policy", "same-origin",
                    "Permissions-Policy", "camera=(), geolocation=(), microphone=()");

    private static final String POLICY =
            "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

    /// Renders `reply` for the reader of `view`.
    Outgoing print(Reply reply, View view) {
        return switch (reply) {
            case Reply.Page(int status, String template, Map<String, Object> model) ->
                    page(status, template, model, view);
            case Reply.Trouble trouble ->
                    page(trouble.status(), "trouble.jte", Map.of("trouble", trouble), view);
            case Reply.SeeOther(String address, Map<String, String> headers) ->
                    new Outgoing(303, headers(headers), new byte[0], false)
                            .with(Map.of("Location", address));
            case Reply.Flow(String type, Reply.Flowing flowing) ->
                    new Outgoing(
                            200,
                            headers(Map.of("Content-Type", type)),
                            new byte[0],
                            false,
                            Optional.of(flowing));
            case Reply.Bytes(int status, String type, Map<String, String> headers, byte[] bytes) ->
                    new Outgoing(status, headers(headers), bytes, false)
                            .with(Map.of("Content-Type", type));
        };
    }

    /// The last resort, where not even the page of trouble could be rendered.
    static Outgoing withoutTemplate() {
        String text =
                """
                The desk broke while it answered. What was saved is safe. Go back and try again.
                内部でエラーが起きました。保存済みの内容は無事です。戻ってやり直してください。
                """;
        Map<String, String> headers = headers(Map.of("Content-Type", "text/plain; charset=utf-8"));
        return new Outgoing(500, headers, text.getBytes(StandardCharsets.UTF_8), true);
    }

    private Outgoing page(int status, String template, Map<String, Object> model, View view) {
        Map<String, Object> all = new HashMap<>(model);
        all.put("view", view);
        Utf8ByteOutput html = new Utf8ByteOutput();
        engine.render(template, all, html);
        Map<String, String> headers = headers(Map.of());
        headers.put("Content-Type", "text/html; charset=utf-8");
        headers.put("Content-Language", view.words().tag());
        headers.put("Vary", "Accept-Language, Cookie");
        headers.put("Content-Security-Policy", POLICY);
        return new Outgoing(status, headers, bytes(html), false);
    }

    private static Map<String, String> headers(Map<String, String> own) {
        Map<String, String> headers = new LinkedHashMap<>(ALWAYS);
        headers.put("Cache-Control", "no-store");
        headers.putAll(own);
        return headers;
    }

    private static byte[] bytes(Utf8ByteOutput html) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(html.getContentLength());
        try {
            html.writeTo(bytes);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot write to memory.", failed);
        }
        return bytes.toByteArray();
    }
}
