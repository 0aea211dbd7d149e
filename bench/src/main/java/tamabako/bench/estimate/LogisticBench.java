package tamabako.bench.estimate;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tamabako.insight.estimate.LogisticFit;
import tamabako.insight.estimate.LogisticRegression;
import tamabako.insight.estimate.Trials;

/// A logistic regression of 100,000 trials by 30 features, ours and R's glm.fit, on the same
/// numbers.
///
/// Time is that of all threads of the process on a processor, compiling and collecting included,
/// while the fit runs. The first fit of a fresh process is told apart: it runs mostly before its
/// code is compiled.
///
/// `LogisticBench [TRIALS [FEATURES [TIMES]]]`
public final class LogisticBench {

    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private static final double SECOND = 1e9;

    private LogisticBench() {}

    /// Runs both sides; takes about a minute.
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int size = number(arguments, 0, 100_000);
        int features = number(arguments, 1, 30);
        int times = number(arguments, 2, 5);
        say("load average %.1f", PROCESS.getSystemLoadAverage());
        Drawn drawn = Drawn.of(size, features);
        Trials trials = drawn.trials();
        List<Double> seconds = new ArrayList<>();
        LogisticFit fit = fit(trials, seconds);
        for (int i = 0; i < times; i++) {
            fit = fit(trials, seconds);
        }
        Path file = drawn.written();
        try {
            GlmFit theirs = GlmFit.run(file, features, times);
            double first = seconds.getFirst();
            double ours = median(seconds.subList(1, seconds.size()));
            double glm = median(theirs.seconds());
            say("R glm.fit    %.3f s %s", glm, theirs.seconds());
            say("ours, first  %.3f s, %.2f of R's", first, first / glm);
            say("ours, later  %.3f s, %.2f of R's %s", ours, ours / glm, seconds);
            say("%d steps, largest difference %.1e", fit.steps(), difference(fit, theirs));
        } finally {
            Files.delete(file);
        }
    }

    private static LogisticFit fit(Trials trials, List<Double> seconds) {
        long start = PROCESS.getProcessCpuTime();
        LogisticFit fit = LogisticRegression.fit(trials).orElseThrow();
        seconds.add((PROCESS.getProcessCpuTime() - start) / SECOND);
        return fit;
    }

    private static double difference(LogisticFit ours, GlmFit theirs) {
        double most = 0;
        for (int i = 0; i < theirs.coefficients().size(); i++) {
            double our = ours.coefficients().get(i).value();
            most = Math.max(most, Math.abs(our - theirs.coefficients().get(i)));
        }
        return most;
    }

    private static double median(List<Double> numbers) {
        return numbers.stream().sorted().toList().get(numbers.size() / 2);
    }

    private static int number(String[] arguments, int at, int otherwise) {
        return arguments.length > at ? Integer.parseInt(arguments[at]) : otherwise;
    }

    private static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, format + "%n", values);
    }
}
