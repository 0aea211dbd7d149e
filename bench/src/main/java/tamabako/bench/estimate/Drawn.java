package tamabako.bench.estimate;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import tamabako.insight.estimate.Trials;

/// Drawn trials: a constant and normal features, of which each but the last few tells a little.
final class Drawn {

    private static final long SEED = 20261130;

    private final double[][] rows;
    private final double[] well;

    private Drawn(double[][] rows, double[] well) {
        this.rows = rows;
        this.well = well;
    }

    static Drawn of(int trials, int features) {
        SplittableRandom chance = new SplittableRandom(SEED);
        double[][] rows = new double[trials][features];
        double[] well = new double[trials];
        for (int i = 0; i < trials; i++) {
            rows[i][0] = 1;
            double logit = 0.5;
            for (int j = 1; j < features; j++) {
                rows[i][j] = chance.nextGaussian();
                logit += rows[i][j] * (j % 2 == 0 ? 0.3 : -0.3) * (features - j) / features;
            }
            well[i] = chance.nextDouble() < 1 / (1 + Math.exp(-logit)) ? 1 : 0;
        }
        return new Drawn(rows, well);
    }

    Trials trials() {
        return Trials.of(rows, well);
    }

    /// Row by row, each followed by what came of it, as little-endian doubles.
    Path written() throws IOException {
        ByteBuffer all =
                ByteBuffer.allocate(rows.length * (rows[0].length + 1) * Double.BYTES)
                        .order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < rows.length; i++) {
            for (double feature : rows[i]) {
                all.putDouble(feature);
            }
            all.putDouble(well[i]);
        }
        Path file = Files.createTempFile("trials", ".bin");
        Files.write(file, all.array());
        return file;
    }
}
