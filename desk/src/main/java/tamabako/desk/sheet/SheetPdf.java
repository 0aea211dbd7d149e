package tamabako.desk.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.paper.SheetPrint;
import tamabako.paper.wish.Part;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Size;
import tamabako.paper.wish.Unprintable;
import tamabako.problems.Sheet;

/// Sheets as PDF: `/sheets/K7QM-29XF.pdf?part=key&language=ja&size=large`.
public final class SheetPdf {

    private SheetPdf() {}

    static Reply reply(Sheet sheet, Request request) {
        return reply(List.of(sheet), request);
    }

    /// Several sheets as one PDF; at least one.
    public static Reply reply(List<Sheet> sheets, Request request) {
        Fields asked = request.query();
        Optional<Part> part = choice(Part.values(), asked.find("part").orElse("sheet"));
        Optional<Size> size = choice(Size.values(), asked.find("size").orElse("normal"));
        String language = asked.find("language").orElse(request.words().tag());
        if (part.isEmpty() || size.isEmpty() || !language.matches("[a-z]{2,3}")) {
            return Reply.trouble(400, "print-choice");
        }
        PrintWish wish =
                new PrintWish(
                        Locale.of(language),
                        part.get(),
                        size.get(),
                        Optional.empty(),
                        Optional.empty());
        try {
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            SheetPrint.write(sheets, wish, pdf);
            return new Reply.Bytes(200, "application/pdf", named(sheets, wish), pdf.toByteArray());
        } catch (Unprintable refused) {
            return Reply.trouble(400, "unprintable", refused.message(request.words().language()));
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot write to memory.", failed);
        }
    }

    private static Map<String, String> named(List<Sheet> sheets, PrintWish wish) {
        String which = sheets.size() == 1 ? sheets.getFirst().id() : "sheets";
        String name = which + "-" + wish.part().name().toLowerCase(Locale.ROOT);
        return Map.of("Content-Disposition", "inline; filename=\"" + name + ".pdf\"");
    }

    private static <E extends Enum<E>> Optional<E> choice(E[] known, String word) {
        return Arrays.stream(known)
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }
}
