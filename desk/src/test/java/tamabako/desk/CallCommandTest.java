package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CallCommandTest {

    @TempDir Path folder;

    private final Terminal terminal = new Terminal();

    private int run(String problems, String... options) throws IOException {
        String file = Files.writeString(folder.resolve("sums.txt"), problems).toString();
        return terminal.run(List.of("call", file), options);
    }

    /// The call of wakumusu.com, answer 310.
    @Test
    void thePublishedCallIsPrintedAsItIsCalled() throws IOException {
        assertThat(run("19+80+761-456-94\n", "--lang", "ja")).isZero();

        assertThat(terminal.out())
                .isEqualTo(
                        """
                        # 1
                        願いましては\tねがいましては
                        19円なり\tじゅう きゅう えん なり
                        80円なり\tはちじゅう えん なり
                        761円なり\tななひゃく ろくじゅう いち えん なり
                        引いては、456円なり\tひいては, よんひゃく ごじゅう ろく えん なり
                        94円では\tきゅうじゅう よん えん では
                        = 310円\tさんびゃく じゅう えん

                        """);
    }

    @Test
    void theSameCallAsJson() throws IOException {
        assertThat(run("19-7\n", "--as", "json", "--unit", "USD")).isZero();

        JsonNode call = new ObjectMapper().readTree(terminal.out());
        assertThat(call.at("/opening/said").asText()).isEqualTo("starting with");
        assertThat(call.at("/rows/1/shown").asText()).isEqualTo("minus $7, that's all");
        assertThat(call.at("/rows/1/said").asText()).isEqualTo("minus seven dollars, that's all");
        assertThat(call.at("/answer/shown").asText()).isEqualTo("$12");
    }

    @Test
    void whatCannotBeCalledIsNamedAndTheRestIsDone() throws IOException {
        assertThat(run("12345678901234567+1\n3*4\n5+6\n")).isEqualTo(1);

        assertThat(terminal.err())
                .contains("problem 1: Row 1 has 17 digits")
                .contains("problem 2: a product cannot be called");
        assertThat(terminal.out()).startsWith("# 3").contains("eleven");
    }

    @Test
    void aLanguageThatNobodyCallsInIsRefused() throws IOException {
        assertThat(run("1+2\n", "--lang", "tlh")).isEqualTo(2);
        assertThat(terminal.err()).contains("Choose en-US, en-GB or ja");
    }

    @Test
    void theSoundIsWrittenWithTheTimesOfItsRowsBesideIt() throws IOException {
        Path wave = folder.resolve("call.wav");

        assertThat(run("19+80+7\n", "--lang", "ja", "--pace", "3s", "--sound", wave.toString()))
                .isZero();

        JsonNode times = new ObjectMapper().readTree(folder.resolve("call.json").toFile());
        double first = times.at("/rows/0").asDouble();
        assertThat(times.at("/rows/1").asDouble() - first).isEqualTo(3);
        assertThat(times.at("/end").asDouble() - first).isEqualTo(9);
        long samples = (Files.size(wave) - 44) / 2;
        assertThat(samples / 16_000.0).isBetween(first + 9, first + 10);
        assertThat(terminal.err()).contains("Every number can be understood");
    }

    @Test
    void aPaceThatIsTooFastIsToldBeforeItIsSpoken() throws IOException {
        String sum = "1234567890123456+1234567890123456\n";
        String wave = folder.resolve("call.wav").toString();

        assertThat(run(sum, "--pace", "1s", "--sound", wave)).isEqualTo(1);
        assertThat(terminal.err()).contains("Row 1 cannot be spoken in 1.0 s. Give it ");
        assertThat(run(sum, "--pace", "4s", "--sound", wave)).isZero();
        assertThat(terminal.err()).contains("Too fast to be understood");
        assertThat(run(sum, "--pace", "fast", "--sound", wave)).isEqualTo(2);
        assertThat(terminal.err()).contains("Write 3s, 4d or +1");
    }
}
