package tamabako.desk.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.testkit.Property;

class ClockedTest {

    @ParameterizedTest
    @CsvSource({"4:30,270", "4.30,270", "４：３０,270", "4分30秒,270", "0:09,9", "12 5,725", "100:00,6000"})
    void minutesAndSecondsAreReadAsTheyAreWritten(String written, long seconds) {
        assertThat(Clocked.read(written))
                .isEqualTo(new Clocked.Read.Good(Optional.of(Duration.ofSeconds(seconds))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "4:60", "-1:30", "1:2:3", "soon", "0:00", "9999:00"})
    void whatMayMeanSomethingElseIsNotGuessed(String written) {
        assertThat(Clocked.read(written)).isEqualTo(new Clocked.Read.Unclear());
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        Property.forSeeds(
                500,
                draw -> {
                    Duration took = Duration.ofSeconds(draw.between(1, 59_999));
                    assertThat(Clocked.read(Clocked.write(took)))
                            .isEqualTo(new Clocked.Read.Good(Optional.of(took)));
                });
    }
}
