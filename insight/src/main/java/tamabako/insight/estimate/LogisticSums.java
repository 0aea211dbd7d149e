package tamabako.insight.estimate;

/// What one pass over trials sums up: the likelihood, its slope, and features by features.
///
/// Squares take the time. They are summed for four rows and two features at once, so that each sum
/// is fetched and put back once for four rows, and each row is fetched once for two sums.
final class LogisticSums {

    private final int width;
    private final double[] features;
    private final double[] gradient;
    private final double[][] squares;
    private double height;

    /// @param coefficients as many as the trials are wide
    LogisticSums(Trials trials, double[] coefficients) {
        width = trials.width();
        features = trials.features();
        gradient = new double[width];
        squares = new double[width][width];
        for (int group = 0; group < trials.filled(); group += 4) {
            addFour(trials, coefficients, group);
        }
    }

    double height() {
        return height;
    }

    double[] gradient() {
        return gradient;
    }

    /// The lower half counts.
    double[][] squares() {
        return squares;
    }

    private void addFour(Trials trials, double[] coefficients, int group) {
        int a = group * width;
        int b = a + width;
        int c = b + width;
        int d = c + width;
        double logitA = 0;
        double logitB = 0;
        double logitC = 0;
        double logitD = 0;
        for (int i = 0; i < width; i++) {
            double coefficient = coefficients[i];
            logitA += features[a + i] * coefficient;
            logitB += features[b + i] * coefficient;
            logitC += features[c + i] * coefficient;
            logitD += features[d + i] * coefficient;
        }
        double chanceA = chance(trials, group, logitA);
        double chanceB = chance(trials, group + 1, logitB);
        double chanceC = chance(trials, group + 2, logitC);
        double chanceD = chance(trials, group + 3, logitD);
        addSlope(
                a,
                trials.well(group) - trials.trials(group) * chanceA,
                trials.well(group + 1) - trials.trials(group + 1) * chanceB,
                trials.well(group + 2) - trials.trials(group + 2) * chanceC,
                trials.well(group + 3) - trials.trials(group + 3) * chanceD);
        addSquares(
                a,
                trials.trials(group) * chanceA * (1 - chanceA),
                trials.trials(group + 1) * chanceB * (1 - chanceB),
                trials.trials(group + 2) * chanceC * (1 - chanceC),
                trials.trials(group + 3) * chanceD * (1 - chanceD));
    }

    /// Counts one group's likelihood and gives the chance that its logit stands for.
    private double chance(Trials trials, int group, double logit) {
        double odds = Math.exp(-Math.abs(logit));
        height +=
                trials.well(group) * logit
                        - trials.trials(group) * (Math.max(logit, 0) + Math.log1p(odds));
        return (logit < 0 ? odds : 1) / (1 + odds);
    }

    private void addSlope(int a, double missA, double missB, double missC, double missD) {
        int b = a + width;
        int c = b + width;
        int d = c + width;
        for (int i = 0; i < width; i++) {
            gradient[i] +=
                    missA * features[a + i]
                            + missB * features[b + i]
                            + missC * features[c + i]
                            + missD * features[d + i];
        }
    }

    private void addSquares(int a, double weightA, double weightB, double weightC, double weightD) {
        int b = a + width;
        int c = b + width;
        int d = c + width;
        for (int i = 0; i < width; i += 2) {
            double firstA = weightA * features[a + i];
            double firstB = weightB * features[b + i];
            double firstC = weightC * features[c + i];
            double firstD = weightD * features[d + i];
            double nextA = weightA * features[a + i + 1];
            double nextB = weightB * features[b + i + 1];
            double nextC = weightC * features[c + i + 1];
            double nextD = weightD * features[d + i + 1];
            double[] first = squares[i];
            double[] next = squares[i + 1];
            for (int j = 0; j <= i + 1; j++) {
                double rowA = features[a + j];
                double rowB = features[b + j];
                double rowC = features[c + j];
                double rowD = features[d + j];
                first[j] += firstA * rowA + firstB * rowB + firstC * rowC + firstD * rowD;
                next[j] += nextA * rowA + nextB * rowB + nextC * rowC + nextD * rowD;
            }
        }
    }
}
