package tamabako.paper;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tamabako.paper.Reader.Asked;
import tamabako.paper.Reader.Told;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;
import tamabako.testkit.Draw;

/// Papers in the shape of every shipped grade, read back from the files in both languages.
class PaperReadBackTest {

    @Test
    void keyAndMarkingSheetOfEverySectionAnswerWhatStandsOnThePaper() {
        forEverySection((section, wish) -> {
            Map<String, Told> key = Reader.key(print(section, wish, PaperPart.KEY));
            Map<String, Asked> asked = asked(section, wish);
            PaperSection only = section.sections().getFirst();
            assertThat(key.keySet()).isEqualTo(asked.keySet());
            assertThat(key).hasSameSizeAs(only.problems());
            for (Problem problem : only.problems()) {
                Reworked.check(
                        problem,
                        requireNonNull(asked.get(problem.id())),
                        requireNonNull(key.get(problem.id())));
            }
        });
    }

    @Test
    void theMarkingSheetIsOnePageForAllButTheLongestPapers() {
        forEveryGrade((paper, wish) -> {
            int pages = print(paper, wish, PaperPart.MARKING).pages().size();
            assertThat(pages)
                    .as(paper.ladder() + " " + paper.grade().id())
                    .isEqualTo(paper.problems().size() < 300 ? 1 : pages)
                    .isLessThanOrEqualTo(2);
        });
    }

    @Test
    void nothingLeavesThePrintAreaAndNoTwoCharactersTouchOnAnyPaper() {
        PageSize[] sizes = PageSize.values();
        forEveryGrade((paper, wish) -> {
            PageSize size = sizes[paper.problems().size() % sizes.length];
            PaperPrintWish upright =
                    wish.on(size)
                            .with(
                                    PaperPart.PAPER,
                                    PaperPart.KEY,
                                    PaperPart.SCRIPT,
                                    PaperPart.MARKING);
            Placed.insideAndApart(print(paper, upright), size);
        });
    }

    private static void forEverySection(BiConsumer<Paper, PaperPrintWish> check) {
        forEveryGrade((paper, wish) -> {
            for (int i = 0; i < paper.sections().size(); i++) {
                check.accept(GradePapers.only(paper, i), wish);
            }
        });
    }

    private static void forEveryGrade(BiConsumer<Paper, PaperPrintWish> check) {
        int seed = 1;
        for (Ladder ladder : Ladders.shipped()) {
            for (Grade grade : ladder.grades()) {
                Paper paper = GradePapers.of(ladder, grade, new Draw(seed));
                boolean english = seed++ % 2 == 0;
                check.accept(paper, english ? PaperPrintWish.ENGLISH : PaperPrintWish.JAPANESE);
            }
        }
    }

    /// What is asked, as far as it stands on the paper: on the pad for pads. A story is taken at
    /// its word: two numbers that are multiplied.
    private static Map<String, Asked> asked(Paper paper, PaperPrintWish wish) {
        PaperSection section = paper.sections().getFirst();
        if (section.pad().isPresent()) {
            return fromPad(paper, wish);
        }
        Pages pages = print(paper, wish, PaperPart.PAPER);
        boolean stories = section.problems().getFirst().terms().told().isPresent();
        return stories ? fromStories(pages, wish.language()) : Reader.sheet(pages);
    }

    private static Map<String, Asked> fromPad(Paper paper, PaperPrintWish wish) {
        Map<Integer, List<BigDecimal>> leaves = leaves(print(paper, wish, PaperPart.PADS));
        String words = String.join(" ", text(print(paper, wish, PaperPart.PAPER)));
        Pattern question =
                wish.language().equals(Locale.ENGLISH)
                        ? Pattern.compile("(\\d+) Line (\\d) leaves (\\d+)–(\\d+)")
                        : Pattern.compile("(\\d+) (\\d)行目 (\\d+)〜(\\d+)枚目");
        Map<String, Asked> asked = new LinkedHashMap<>();
        Matcher found = question.matcher(words);
        while (found.find()) {
            int line = Integer.parseInt(found.group(2));
            int first = Integer.parseInt(found.group(3));
            int last = Integer.parseInt(found.group(4));
            List<BigDecimal> rows =
                    IntStream.rangeClosed(first, last)
                            .mapToObj(leaf -> requireNonNull(leaves.get(leaf)).get(line - 1))
                            .toList();
            asked.put(found.group(1), new Asked("+", rows));
        }
        for (Problem problem : paper.problems()) {
            PadLine line = (PadLine) problem.terms().told().orElseThrow();
            assertThat(requireNonNull(asked.get(problem.id())).numbers()).hasSize(line.leaves());
        }
        return asked;
    }

    private static Map<Integer, List<BigDecimal>> leaves(Pages pages) {
        Map<Integer, List<BigDecimal>> leaves = new LinkedHashMap<>();
        for (PadPages.Leaf leaf : PadPages.leaves(pages)) {
            leaves.put(leaf.number(), leaf.amounts());
        }
        return leaves;
    }

    private static Map<String, Asked> fromStories(Pages pages, Locale language) {
        String words = String.join(" ", text(pages));
        Pattern story =
                language.equals(Locale.ENGLISH)
                        ? Pattern.compile(
                                "(\\d+) A shop orders (\\d+) crates.*?¥([\\d,]+) ?a crate")
                        : Pattern.compile("(\\d+) 港の店が、1箱¥([\\d,]+)の干物を(\\d+)箱");
        Map<String, Asked> asked = new LinkedHashMap<>();
        Matcher found = story.matcher(words);
        while (found.find()) {
            List<BigDecimal> numbers =
                    List.of(Reader.value(found.group(2)), Reader.value(found.group(3)));
            asked.put(found.group(1), new Asked("×", numbers));
        }
        return asked;
    }

    private static List<String> text(Pages pages) {
        return pages.text().stream().flatMap(List::stream).toList();
    }

    private static Pages print(Paper paper, PaperPrintWish wish, PaperPart part) {
        return print(paper, wish.with(part));
    }

    private static Pages print(Paper paper, PaperPrintWish wish) {
        return Pages.read(Pages.print(paper, wish));
    }
}
