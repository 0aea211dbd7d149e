package tamabako.insight.slip;

/// The slips of reading or hearing one digit, whatever its place: taken for each other digit, or
/// left out.
final class DigitSlips {

    private static final int MOST = 10;
    private static final Options[] READ = all(false);
    private static final Options[] HEARD = all(true);

    private DigitSlips() {}

    /// Those of `digit`, 0 to 9, each with its change of the digit. Ways and digits are packed
    /// without a place.
    static Options of(int digit, boolean heard) {
        return (heard ? HEARD : READ)[digit];
    }

    private static Options[] all(boolean heard) {
        Options[] all = new Options[10];
        for (int digit = 0; digit <= 9; digit++) {
            Events slips = new Events(MOST);
            add(digit, heard, slips);
            all[digit] = new Options(slips);
        }
        return all;
    }

    private static void add(int digit, boolean heard, Events slips) {
        long code = Code.of(heard ? Way.DIGIT_MISHEARD : Way.DIGIT_MISREAD, 0);
        for (int as = 0; as <= 9; as++) {
            if (as != digit) {
                double weight = heard ? Weights.misheard(digit, as) : Weights.misread(digit, as);
                slips.add(as - digit, Code.with(code, digit, as), weight);
            }
        }
        if (digit != 0) {
            slips.add(-digit, Code.with(Code.of(Way.DIGIT_SKIPPED, 0), digit));
        }
    }
}
