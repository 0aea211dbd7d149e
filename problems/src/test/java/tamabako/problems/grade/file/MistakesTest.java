package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tamabako.testkit.Golden;

/// Every mistake is told with its file, its line and how to mend it.
class MistakesTest {

    /// In the sample, `written` becomes `instead`.
    private record Slip(String written, String instead) {}

    private static final List<Slip> SLIPS =
            List.of(
                    new Slip("pass: {points: 80}", "pass: {points: 80"),
                    new Slip("    time: 30 min", "\ttime: 30 min"),
                    new Slip(SampleLadder.YAML, "# only a comment\n"),
                    new Slip(SampleLadder.YAML, "x".repeat(500_001)),
                    new Slip(SampleLadder.YAML, "- just a list\n"),
                    new Slip(SampleLadder.YAML, "[".repeat(400_000)),
                    new Slip("pass: {points: 80}", "pass: 80"),
                    new Slip("pass: {points: 80}", "pass: points:80"),
                    new Slip("    time: 30 min", "    time:30 min: x"),
                    new Slip("    time: 30 min", "    time：30: 分"),
                    new Slip("of: [pad, roots]", "of: pad"),
                    new Slip("digits: 2-3}", "digits: [2, 3]}"),
                    new Slip("[direct, five-complement]", "[]"),
                    new Slip("    numbering: by section", "    number: by section"),
                    new Slip("ji: 6", "rows: 4"),
                    new Slip("    time: 30 min", "    name: Grade two"),
                    new Slip("degree: 2, ", ""),
                    new Slip("            rows: 10\n", "            digits: 2-4\n"),
                    new Slip("            mixed: {first half: 2, second half: 2}\n", ""),
                    new Slip("            places: 3\n", ""),
                    new Slip("kind: roots", "kind: root"),
                    new Slip("numbering: by section", "numbering: per section"),
                    new Slip("count: 15", "count: fifteen"),
                    new Slip("digits: 2-5", "digits: 5-2"),
                    new Slip("time: 90 s", "time: 1 hour"),
                    new Slip("confirmed: no", "confirmed: maybe"),
                    new Slip("name: Grade 2", "name: \"\""),
                    new Slip("section: pad", "section: 伝票算"),
                    new Slip("{en: Our grades, ja: 教室の級}", "{en: Our grades, jp: 教室の級}"),
                    new Slip("{en: Our grades, ja: 教室の級}", "{ja: 教室の級}"),
                    new Slip("unit: JPY", "unit: yen"),
                    new Slip("grade: \"1\"", "grade: \"2\""),
                    new Slip("of: [pad, roots]", "of: [pad, root]"),
                    new Slip("from: {ours: [time]}", "from: {our: [time]}"),
                    new Slip("            rows: 10\n", "            rows: 9\n"),
                    new Slip("ji: 25", "ji: 30"),
                    new Slip("ji: 6", "ji: 9"),
                    new Slip("in all: 7", "in all: 10"),
                    new Slip("decimals: 5", "decimals: 11"),
                    new Slip("rounded up: 1", "rounded up: 10"),
                    new Slip("mixed: {first half: 2,", "mixed: {first half: 6,"),
                    new Slip("below zero: {second half: 1}", "below zero: {second half: 3}"),
                    new Slip("below zero: {second half: 1}", "below zero: 5"),
                    new Slip("techniques: [direct, five-complement]", "techniques: [direct]"),
                    new Slip("pad leaves: 20", "pad leaves: 6"),
                    new Slip("    numbering: by section", "    time: 10 min"),
                    new Slip("        time: 90 s\n", ""),
                    new Slip("pass: {points: 80}", "pass: {points: 80, right in each: 8}"),
                    new Slip("pass: {points: 80}", "pass: {points: 800}"),
                    new Slip("name: Low, points: 50", "name: Low, points: 95"),
                    new Slip("name: High, points: 90", "name: High, points: 101"),
                    new Slip("choose: 1", "choose: 2"),
                    new Slip("from: {ours: [time]}", "from: {ours: [times]}"));

    @Test
    void eachSlipIsToldInWords() {
        StringBuilder told = new StringBuilder();
        for (Slip slip : SLIPS) {
            List<Mistake> mistakes = mistakes(broken(slip));
            assertThat(mistakes).as(slip.instead()).isNotEmpty();
            told.append("# ").append(title(slip)).append('\n');
            for (Mistake mistake : mistakes) {
                told.append(mistake.message(Locale.ENGLISH)).append('\n');
                told.append(mistake.message(Locale.JAPANESE)).append('\n');
            }
            told.append('\n');
        }
        Golden.assertGolden("ladder-mistakes.txt", told.toString());
    }

    @Test
    void everySortOfFaultIsAmongThem() {
        Set<String> found = new TreeSet<>();
        for (Slip slip : SLIPS) {
            mistakes(broken(slip)).forEach(m -> found.add(m.fault().getClass().getSimpleName()));
        }
        Set<String> all = new TreeSet<>();
        for (Class<?> fault : Fault.class.getPermittedSubclasses()) {
            all.add(fault.getSimpleName());
        }

        assertThat(found).isEqualTo(all);
    }

    @Test
    void oneReadingFindsAllMistakesInTheOrderOfTheirLines() {
        String yaml =
                SampleLadder.YAML
                        .replace("time: 90 s", "time: soon")
                        .replace("ji: 25", "ji: 24")
                        .replace("grade: \"1\"", "grade: One")
                        .replace("degree: 2", "degree: 4")
                        .replace("confirmed: yes", "confirmed: si")
                        .replace("points: 80", "point: 80");

        assertThat(mistakes(yaml))
                .extracting(Mistake::line)
                .containsExactly(
                        line("confirmed: yes"),
                        line("points: 80"),
                        line("points: 80"),
                        line("ji: 25"),
                        line("grade: \"1\""),
                        line("time: 90 s"),
                        line("degree: 2"));
    }

    @Test
    void theColumnOfAMistakeIsThatOfItsValue() {
        Mistake mistake = mistakes(SampleLadder.YAML.replace("degree: 2", "degree: 4")).getFirst();

        assertThat(mistake.line()).isEqualTo(line("degree: 2"));
        assertThat(mistake.column())
                .isEqualTo("          - {count: 10, kind: roots, degree: 4".length());
        assertThat(mistake.file()).isEqualTo(SampleLadder.FILE);
    }

    @Test
    void whatIsNestedWithoutEndIsAMistakeAndNoCrash() {
        assertThat(mistakes("{a: ".repeat(100_000))).isNotEmpty();
        assertThat(mistakes("a: &a [*a, *a]\nladder: *a\ngrades: *a\n")).isNotEmpty();
        assertThat(mistakes("ladder: one\n---\nladder: two\n")).isNotEmpty();
    }

    private static String broken(Slip slip) {
        assertThat(SampleLadder.YAML).contains(slip.written());
        return SampleLadder.YAML.replace(slip.written(), slip.instead());
    }

    /// The line of the sample that holds `written`, counted from 1.
    private static int line(String written) {
        String before = SampleLadder.YAML.substring(0, SampleLadder.YAML.indexOf(written));
        return 1 + (int) before.chars().filter(figure -> figure == '\n').count();
    }

    private static String title(Slip slip) {
        String instead = slip.instead().strip();
        String cut = instead.length() > 60 ? instead.substring(0, 60) + "..." : instead;
        return cut.isEmpty() ? "without " + slip.written().strip() : cut.replace("\n", " | ");
    }

    private static List<Mistake> mistakes(String yaml) {
        return switch (LadderFile.read(SampleLadder.FILE, yaml)) {
            case LadderFile.Read _ -> List.of();
            case LadderFile.Mistaken(List<Mistake> mistakes) -> mistakes;
        };
    }
}
