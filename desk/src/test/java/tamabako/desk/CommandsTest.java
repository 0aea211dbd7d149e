package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The commands, once round the job: make, sheet, mark, slips.
class CommandsTest {

    @TempDir Path folder;

    private final Terminal terminal = new Terminal();

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void makeGivesTheSameProblemsForTheSameSeed() throws IOException {
        assertThat(
                        terminal.run(
                                "make",
                                "--rows",
                                "4",
                                "--digits",
                                "2-3",
                                "--count",
                                "5",
                                "--seed",
                                "7"))
                .isZero();
        String first = terminal.out();
        assertThat(terminal.lines()).hasSize(5).allMatch(line -> line.get("rows").size() == 4);
        assertThat(terminal.err()).contains("seed 7");

        terminal.run("make", "--rows", "4", "--digits", "2-3", "--count", "5", "--seed", "7");

        assertThat(terminal.out()).isEqualTo(first);
    }

    @Test
    void aWishCanBeKeptInAFile() throws IOException {
        String wish = file("tuesday.wish", "--rows 3\n--digits 1\n--count 4\n--seed 7\n");

        assertThat(terminal.run("make", "@" + wish)).isZero();
        assertThat(terminal.lines()).hasSize(4).allMatch(line -> line.get("rows").size() == 3);
    }

    @Test
    void anImpossibleWishIsRefusedWithTheReasonAndTheNearestThatWorks() {
        int exit =
                terminal.run(
                        "make", "--rows", "3", "--digits", "1", "--techniques", "five-complement");

        assertThat(exit).isEqualTo(1);
        assertThat(terminal.out()).isEmpty();
        assertThat(terminal.err()).contains("only complements to five");
        String nearest =
                terminal.err().lines().filter(l -> l.startsWith("Nearest")).findFirst().get();
        String[] again = nearest.substring("Nearest: tamabako ".length()).split(" ", -1);
        assertThat(terminal.run(again)).as(nearest).isZero();
    }

    @Test
    void aWrongOptionIsNamed() {
        assertThat(terminal.run("make", "--techniques", "sideways")).isEqualTo(2);
        assertThat(terminal.err()).contains("There is no technique \"sideways\"");
        assertThat(terminal.run("make", "--digits", "many")).isEqualTo(2);
        assertThat(terminal.err()).contains("\"many\" is no number of digits");
        assertThat(terminal.run("sheet", folder.resolve("none.jsonl").toString())).isEqualTo(2);
        assertThat(terminal.err()).contains("There is no file").doesNotContain("Exception");
    }

    @Test
    void aSheetIsWrittenWhole() throws IOException {
        String problems = file("sums.txt", "54 - 29 + 38\n306 x 4\nnonsense\n1225 / 35\n");
        Path pdf = folder.resolve("sheet.pdf");

        int exit = terminal.run("sheet", problems, "-o", pdf.toString(), "--title", "Tuesday");

        assertThat(exit).isEqualTo(1);
        assertThat(terminal.err()).startsWith("line 3: ");
        try (PDDocument read = Loader.loadPDF(pdf.toFile());
                var files = Files.list(folder)) {
            assertThat(read.getNumberOfPages()).isEqualTo(2);
            assertThat(files.map(Path::getFileName).map(Path::toString))
                    .containsExactlyInAnyOrder("sums.txt", "sheet.pdf");
        }
    }

    @Test
    void answersInCsvAreMarkedAgainstTheirProblems() throws IOException {
        String problems =
                file(
                        "sums.jsonl",
                        "{\"id\":\"a\",\"kind\":\"product\",\"factors\":[\"306\",\"4\"]}\n");
        String answers =
                file("answers.csv", "answer,pupil,id\n\"1,224\",Aoi,a\n1224,Ben,a\n7,Emi,z\n");

        assertThat(terminal.run("mark", problems, answers)).isEqualTo(1);

        assertThat(terminal.err()).startsWith("line 4: there is no problem \"z\"");
        assertThat(terminal.lines())
                .extracting(line -> line.get("pupil").asText() + " " + line.get("mark").asText())
                .containsExactly("Aoi right", "Ben wrong-form");
        assertThat(terminal.lines().get(1).get("say").get("ja").asText()).isNotBlank();
        terminal.run("mark", "--rules", "easy", problems, answers);
        assertThat(terminal.lines()).allMatch(line -> line.get("right").asBoolean());
    }

    @Test
    void slipsGivesALineForEveryLineAndNamesTheBadOne() throws IOException {
        String attempts =
                file(
                        "attempts.jsonl",
                        """
                        {"problem":{"kind":"column","rows":["54","-29","38"]},"answer":"63"}
                        {"problem":{"kind":"column","rows":["54","-2x9"]},"answer":"63"}
                        {"problem":{"kind":"product","factors":["38","2"]},"answer":"616","pupil":"goro"}
                        """);

        assertThat(terminal.run("slips", attempts)).isEqualTo(1);

        assertThat(terminal.err()).startsWith("line 2: ").contains("rows.2");
        List<JsonNode> lines = terminal.lines();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0).get("right").asBoolean()).isTrue();
        assertThat(lines.get(1).get("fault").asText()).startsWith("line 2: ");
        // A one-digit product put one rod too far left, as teachers name it (ga-illness).
        assertThat(lines.get(2).get("slips").get(0).get("slip").asText())
                .isEqualTo("product-misplaced");
        BigDecimal shares = BigDecimal.ZERO;
        for (JsonNode slip : lines.get(2).get("slips")) {
            shares = shares.add(slip.get("share").decimalValue());
        }
        assertThat(shares).isBetween(new BigDecimal("0.99"), new BigDecimal("1.01"));
    }

    @Test
    void slipsTellsOfEveryPupilAndNamesWhatCannotHaveHappened() throws IOException {
        String attempt =
                "{\"problem\":{\"kind\":\"column\",\"rows\":[\"%s\",\"-4\"]},\"answer\":\"%s\","
                        + "\"seconds\":%s,\"pupil\":\"%s\"}\n";
        String attempts =
                file(
                        "attempts.jsonl",
                        attempt.formatted("12", "6", "5", "goro")
                                + attempt.formatted("31", "25", "5", "goro")
                                + attempt.formatted("12", "8", "0.01", "goro")
                                + attempt.formatted("12", "8", "4", "aoi")
                                + attempt.formatted("53", "47", "5", "goro")
                                + attempt.formatted("53", "?", "5", "goro")
                                + "{\"problem\":{\"kind\":\"column\",\"rows\":[\"34\",\"78\"],"
                                + "\"mode\":\"called\"},\"answer\":\"12\",\"pupil\":\"goro\"}");

        assertThat(terminal.run("slips", "--pupils", attempts)).isEqualTo(1);

        assertThat(terminal.err()).startsWith("line 3: seconds: 0.01 seconds are too few");
        List<JsonNode> lines = terminal.lines();
        assertThat(lines)
                .extracting(line -> line.get("pupil").asText())
                .containsExactly("aoi", "goro", "goro");
        assertThat(lines.get(2).get("work").asText()).isEqualTo("mind");
        assertThat(lines.get(2).get("main").get("slip").asText()).isEqualTo("carry-lost");
        assertThat(lines.get(0).has("main")).isFalse();
        JsonNode goro = lines.get(1);
        assertThat(goro.get("answers").asInt()).isEqualTo(3);
        assertThat(goro.get("notRead").asInt()).isEqualTo(1);
        // "Many answers off by 2" are a teacher's sign for 4 taken by its own 4.
        JsonNode rule = goro.get("rules").get(0);
        assertThat(rule.get("rule").asText()).isEqualTo("take-ten-complement-4-by-4");
        assertThat(rule.get("found").asBoolean()).isTrue();
        assertThat(goro.get("main").get("slip").asText()).isEqualTo("ten-complement-wrong");
        assertThat(goro.get("slips").get(0).get("made").asDouble()).isBetween(2.0, 3.0);
    }

    @Test
    void problemsGoFromOneFormatToTheNextAndComeBackTheSame() throws IOException {
        String sums =
                """
                {"id":"a","kind":"column","rows":["54","-29","38"],"points":5}
                {"id":"b","kind":"quotient","dividend":"114.816","divisor":"8.32","places":3}
                {"id":"c","kind":"column","rows":["1000","-720"],"unit":"JPY","story":{"en":"Change?","ja":"おつりは。"}}
                """;
        String first = file("sums.jsonl", sums);
        String csv = folder.resolve("sums.csv").toString();
        String zip = folder.resolve("sums.zip").toString();

        assertThat(terminal.run("problems", "-o", csv, first)).isZero();
        assertThat(terminal.run("problems", "-o", zip, "--lang", "ja", "--title", "火曜日", csv))
                .isZero();
        assertThat(terminal.run("problems", zip)).isZero();

        assertThat(terminal.out()).isEqualTo(sums);
        assertThat(Files.readString(Path.of(csv))).startsWith("id,kind,");
        assertThat(terminal.run("sheet", csv, "-o", folder.resolve("sheet.pdf").toString()))
                .isZero();
        assertThat(terminal.run("problems", "--to", "text", first)).isZero();
        assertThat(terminal.out().lines()).startsWith("54 - 29 + 38");
    }

    @Test
    void aBadLineOfASpreadsheetAndADamagedPackageAreTold() throws IOException {
        String csv = file("sums.csv", "sum\n54 - 29\n5 5\n");
        assertThat(terminal.run("problems", csv)).isEqualTo(1);
        assertThat(terminal.err()).startsWith("line 3: ");
        assertThat(terminal.lines()).hasSize(1);

        byte[] zip = Files.readAllBytes(Path.of(packed()));
        Files.write(folder.resolve("half.zip"), Arrays.copyOf(zip, zip.length / 3));
        assertThat(terminal.run("problems", folder.resolve("half.zip").toString())).isEqualTo(2);
        assertThat(terminal.err()).contains("The package is damaged");
        assertThat(terminal.run("problems", file("letter.zip", "Dear parents"))).isEqualTo(2);
        assertThat(terminal.err()).contains("stops being XML");
    }

    private String packed() throws IOException {
        String zip = folder.resolve("packed.zip").toString();
        assertThat(terminal.run("problems", "-o", zip, file("one.txt", "54 - 29\n306 x 4\n")))
                .isZero();
        return zip;
    }

    @Test
    void papersComeInEqualFormsWithFreshNumbersAndAsJson() throws IOException {
        Path pdf = folder.resolve("forms.pdf");
        assertThat(
                        terminal.run(
                                "paper",
                                "first-steps",
                                "step-3",
                                "--forms",
                                "2",
                                "--count",
                                "2",
                                "--seed",
                                "5",
                                "--json",
                                "-o",
                                pdf.toString(),
                                "--part",
                                "paper,key"))
                .as(terminal.err())
                .isZero();

        List<JsonNode> papers = terminal.lines();
        assertThat(papers).hasSize(4);
        assertThat(papers)
                .extracting(paper -> paper.get("form").asInt())
                .containsExactly(1, 2, 1, 2);
        assertThat(papers).extracting(paper -> paper.get("paper").asText()).doesNotHaveDuplicates();
        assertThat(papers.getFirst().get("sections").get(0).get("problems")).hasSize(20);
        assertThat(terminal.err()).startsWith("seed 5");
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            assertThat(read.getNumberOfPages()).isGreaterThanOrEqualTo(8);
        }
        JsonNode first = papers.getFirst();
        terminal.run("paper", "first-steps", "step-3", "--forms", "2", "--seed", "5", "--json");
        assertThat(terminal.lines().getFirst().get("sections")).isEqualTo(first.get("sections"));
        assertThat(terminal.lines().getFirst().get("paper")).isNotEqualTo(first.get("paper"));
    }

    @Test
    void papersGoIntoAFolderEachByItsNumber() throws IOException {
        Path papers = folder.resolve("papers");
        assertThat(
                        terminal.run(
                                "paper",
                                "first-steps",
                                "step-2",
                                "--count",
                                "3",
                                "--folder",
                                papers.toString(),
                                "--json"))
                .isZero();
        try (var files = Files.list(papers)) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".pdf", "")))
                    .containsExactlyInAnyOrderElementsOf(
                            terminal.lines().stream()
                                    .map(paper -> paper.get("paper").asText())
                                    .toList());
        }
    }

    @Test
    void whatCannotBeAPaperIsTold() {
        assertThat(terminal.run("paper", "no-ladder", "step-1", "--json")).isEqualTo(2);
        assertThat(terminal.err()).contains("There is no ladder \"no-ladder\"", "first-steps");
        assertThat(terminal.run("paper", "first-steps", "step-99", "--json")).isEqualTo(2);
        assertThat(terminal.err()).contains("has no grade \"step-99\"", "step-1");
        assertThat(terminal.run("paper", "first-steps", "step-1")).isEqualTo(2);
        assertThat(terminal.err()).contains("Say where the papers go");
        assertThat(terminal.run("paper", "first-steps", "step-1", "--json", "--forms", "0"))
                .isEqualTo(2);
        assertThat(terminal.err()).contains("1 to 100 forms");
    }

    @Test
    void laddersAreListedShownAndChecked() throws IOException {
        assertThat(terminal.run("ladders")).isZero();
        assertThat(terminal.out().lines()).anyMatch(line -> line.startsWith("first-steps "));
        assertThat(terminal.run("ladders", "--lang", "ja", "first-steps")).isZero();
        assertThat(terminal.out()).contains("ステップ1", "合格", "未確認");

        assertThat(terminal.run("ladders", "--file", "first-steps")).isZero();
        String own = file("own.yaml", terminal.out().replace("ladder: first-steps", "ladder: own"));
        assertThat(terminal.run("ladders", "--check", own)).isZero();
        assertThat(terminal.out()).contains("the ladder own");
        assertThat(terminal.run("make", "--ladder", own, "--grade", "step-3", "--seed", "2"))
                .isZero();
        assertThat(terminal.lines()).hasSize(20);

        String bad = file("bad.yaml", terminal.out());
        assertThat(terminal.run("ladders", "--check", bad)).isEqualTo(1);
        assertThat(terminal.err()).contains("bad.yaml, line ").doesNotContain("Exception");
        assertThat(terminal.run("paper", bad, "step-1", "--json")).isEqualTo(2);
    }

    @Test
    void aWishInJsonAsksForMore() throws IOException {
        String wish =
                file(
                        "wish.json",
                        "{\n  \"rows\": 4,\n  \"digits\": \"2-3\",\n  \"ji\": 10,\n  \"minus\": 1\n}\n");
        assertThat(terminal.run("make", "--wish", wish, "--count", "6", "--seed", "3")).isZero();
        assertThat(terminal.lines()).hasSize(6);
        for (JsonNode line : terminal.lines()) {
            int digits = 0;
            for (JsonNode row : line.get("rows")) {
                digits += row.asText().replace("-", "").length();
            }
            assertThat(digits).isEqualTo(10);
        }
        String clash = file("clash.json", "{\"rows\":4,\"digits\":1,\"minus\":4}");
        assertThat(terminal.run("make", "--wish", clash)).isEqualTo(1);
        String nearest =
                terminal.err()
                        .lines()
                        .filter(line -> line.startsWith("Nearest: {"))
                        .findFirst()
                        .orElseThrow();
        String granted = file("granted.json", nearest.substring("Nearest: ".length()));
        assertThat(terminal.run("make", "--wish", granted, "--count", "1")).isZero();
        assertThat(terminal.run("make", "--wish", file("bad.json", "{\"rowz\":4}"))).isEqualTo(2);
        assertThat(terminal.err()).contains("\"rowz\" is not known");
    }
}
