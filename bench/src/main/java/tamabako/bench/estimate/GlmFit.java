package tamabako.bench.estimate;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/// R's glm.fit on the same trials, in a process of its own.
///
/// @param seconds of a processor, each time
/// @param coefficients as R has them
record GlmFit(List<Double> seconds, List<Double> coefficients) {

    /// Runs R, which has to be installed.
    static GlmFit run(Path trials, int features, int times)
            throws IOException, InterruptedException {
        Path script = Files.createTempFile("glm", ".R");
        try (InputStream source = GlmFit.class.getResourceAsStream("glm.R")) {
            Files.write(script, Objects.requireNonNull(source).readAllBytes());
            Process process =
                    new ProcessBuilder(
                                    "Rscript",
                                    "--vanilla",
                                    script.toString(),
                                    trials.toString(),
                                    Integer.toString(features),
                                    Integer.toString(times))
                            .redirectError(ProcessBuilder.Redirect.INHERIT)
                            .start();
            List<Double> numbers =
                    new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .map(Double::valueOf)
                            .toList();
            if (process.waitFor() != 0) {
                throw new IOException("R ended with " + process.exitValue() + ".");
            }
            return new GlmFit(numbers.subList(0, times), numbers.subList(times, numbers.size()));
        } finally {
            Files.delete(script);
        }
    }
}
