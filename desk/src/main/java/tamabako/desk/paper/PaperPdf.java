package tamabako.desk.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.paper.FormReportPrint;
import tamabako.paper.PaperPrint;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.wish.Size;
import tamabako.paper.wish.Unprintable;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.setting.FormReport;
import tamabako.problems.setting.Paper;
import tamabako.records.KeptPapers;

/// Papers as PDF: `/papers/K7QM-29XF.pdf?part=paper&part=key&language=ja&size=large&page=b4`, one
/// form of them by `&form=2`.
final class PaperPdf {

    private PaperPdf() {}

    static Reply reply(KeptPapers kept, Request request) {
        Fields asked = request.query();
        Optional<Size> size = choice(Size.values(), PaperPdf::word, asked, "size", "normal");
        Optional<PageSize> page =
                choice(PageSize.values(), PageSize::word, asked, "page", PageSize.A4.word());
        Set<PaperPart> parts = parts(asked);
        List<Paper> papers = papers(kept, asked.text("form"));
        String language = asked.find("language").orElse(request.words().tag());
        boolean isKnown = size.isPresent() && page.isPresent() && language.matches("[a-z]{2,3}");
        if (!isKnown || parts.isEmpty() || papers.isEmpty()) {
            return Reply.trouble(400, "paper-choice");
        }
        PaperPrintWish wish =
                new PaperPrintWish(
                        Locale.of(language),
                        parts,
                        size.get(),
                        page.get(),
                        Optional.empty(),
                        kept.ladder().map(Ladder::name),
                        Optional.empty());
        return print(out -> PaperPrint.write(papers, wish, out), kept.id(), request);
    }

    /// What each form asks of a pupil, side by side, as PDF: `/papers/K7QM-29XF/report.pdf`.
    static Reply report(KeptPapers kept, Request request) {
        FormReport report = FormReport.of(kept.papers());
        Grade grade = kept.papers().getFirst().grade();
        PaperPrintWish wish = PaperPrintWish.ENGLISH.in(request.words().language());
        return print(
                out -> FormReportPrint.write(report, grade, wish, out),
                kept.id() + "-report",
                request);
    }

    /// Something that writes a PDF.
    private interface Printing {
        void write(OutputStream out) throws IOException;
    }

    private static Reply print(Printing printing, String name, Request request) {
        try {
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            printing.write(pdf);
            String file = "inline; filename=\"" + name + ".pdf\"";
            return new Reply.Bytes(
                    200, "application/pdf", Map.of("Content-Disposition", file), pdf.toByteArray());
        } catch (Unprintable refused) {
            return Reply.trouble(400, "unprintable", refused.message(request.words().language()));
        } catch (IllegalArgumentException nothing) {
            return Reply.trouble(400, "paper-choice");
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot write to memory.", failed);
        }
    }

    private static List<Paper> papers(KeptPapers kept, String form) {
        return kept.papers().stream()
                .filter(paper -> form.isEmpty() || form.equals(Integer.toString(paper.form())))
                .toList();
    }

    /// The parts asked for, all where none is named; none where one is not known.
    private static Set<PaperPart> parts(Fields asked) {
        Set<PaperPart> parts = EnumSet.noneOf(PaperPart.class);
        for (String word : asked.all("part")) {
            Optional<PaperPart> part = find(PaperPart.values(), PaperPart::word, word);
            if (part.isEmpty()) {
                return EnumSet.noneOf(PaperPart.class);
            }
            parts.add(part.get());
        }
        return asked.has("part") ? parts : EnumSet.allOf(PaperPart.class);
    }

    private static <T> Optional<T> choice(
            T[] known, Function<T, String> word, Fields asked, String name, String usual) {
        return find(known, word, asked.find(name).orElse(usual));
    }

    private static <T> Optional<T> find(T[] known, Function<T, String> word, String written) {
        return Arrays.stream(known).filter(one -> word.apply(one).equals(written)).findFirst();
    }

    private static String word(Size size) {
        return size.name().toLowerCase(Locale.ROOT);
    }
}
