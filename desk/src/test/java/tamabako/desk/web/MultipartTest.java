package tamabako.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tamabako.testkit.Draw;

/// Forms with files, as RFC 7578 has them and browsers send them.
class MultipartTest {

    private static final String TYPE = "multipart/form-data; boundary=----x7";

    private static final String FORM =
            """
            ------x7
            Content-Disposition: form-data; name="group"

            火曜日
            ------x7
            Content-Disposition: form-data; name="file"; filename="C:\\lists\\名簿.csv"
            Content-Type: text/csv

            name,group
            --x7 is no boundary

            ------x7
            Content-Disposition: form-data; name="none"; filename=""
            Content-Type: application/octet-stream


            ------x7
            Content-Disposition: form-data; name="empty"


            ------x7--
            """
                    .replace("\n", "\r\n");

    private static Optional<Fields> parse(String type, byte[] body) {
        return Multipart.parse(type, body);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void fieldsAndFilesAreTakenApart() {
        Fields fields = parse(TYPE, bytes(FORM)).orElseThrow();
        assertThat(fields.text("group")).isEqualTo("火曜日");
        assertThat(fields.find("empty")).contains("");
        assertThat(fields.file("file").map(Upload::name)).contains("名簿.csv");
        assertThat(
                        fields.file("file")
                                .map(file -> new String(file.bytes(), StandardCharsets.UTF_8)))
                .contains("name,group\r\n--x7 is no boundary\r\n");
        assertThat(fields.file("none")).isEmpty();
        assertThat(fields.has("file")).isFalse();
        assertThat(parse("multipart/form-data; boundary=\"----x7\"; charset=utf-8", bytes(FORM)))
                .isPresent();
    }

    @Test
    void aFormThatIsNotWholeIsNoForm() {
        byte[] whole = bytes(FORM);
        int end = FORM.lastIndexOf("------x7--") + 10;
        for (int length = 0; length < whole.length - (FORM.length() - end); length++) {
            assertThat(parse(TYPE, Arrays.copyOf(whole, length))).as("%d bytes", length).isEmpty();
        }
        assertThat(parse("multipart/form-data", whole)).isEmpty();
        assertThat(parse("multipart/form-data; boundary=other", whole)).isEmpty();
        String many = FORM.substring(0, FORM.indexOf("------x7", 10)).repeat(200);
        assertThat(parse(TYPE, bytes(many + "------x7--\r\n"))).isEmpty();
    }

    @Test
    void whateverComesIsTakenApartOrRefused() {
        byte[] whole = bytes(FORM);
        for (int seed = 0; seed < 3_000; seed++) {
            Draw draw = new Draw(seed);
            byte[] turned = whole.clone();
            for (int i = 0; i < 3; i++) {
                turned[draw.between(0, turned.length - 1)] = (byte) draw.between(0, 255);
            }
            assertThat(parse(TYPE, turned).map(Fields::isEmpty)).isNotNull();
        }
    }
}
