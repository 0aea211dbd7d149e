package tamabako.problems.story;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/// The text of the file of templates that is shipped, for reading and for copying.
public final class StoryTexts {

    private StoryTexts() {}

    /// The whole file.
    public static String shipped() {
        try (InputStream stream =
                Objects.requireNonNull(StoryTexts.class.getResourceAsStream("stories.yaml"))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
