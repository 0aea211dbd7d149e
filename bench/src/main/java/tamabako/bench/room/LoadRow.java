package tamabako.bench.room;

import java.util.Locale;

/// What one run of a server came to. Times are in milliseconds, memory in megabytes.
///
/// @param server which one
/// @param seats how many sat there
/// @param fanOut from an event being on the disk to a seat having read it
/// @param answer from an answer being sent to its acknowledgement having been read
/// @param empty resident before the first seat
/// @param memory resident with every seat there, after a collection
/// @param heap used of the heap then
/// @param counts answers sent, acknowledged, kept, and kept twice
/// @param load of the machine at the end, as the kernel says
record LoadRow(
        String server,
        int seats,
        Times fanOut,
        Times answer,
        long empty,
        long memory,
        long heap,
        String counts,
        String load) {

    /// Half of the times, and all but one of a hundred, are not longer.
    record Times(double half, double most) {}

    static final String HEAD =
            """
            | seats | server | fan-out p50 / p99, ms | answer p50 / p99, ms | memory, of it before the first seat, of it heap in use, MB | answers sent, acknowledged, kept, twice | load |
            | --- | --- | --- | --- | --- | --- | --- |\
            """;

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "| %,d | %s | %,.0f / %,.0f | %,.0f / %,.0f | %,d, %d, %d | %s | %s |",
                seats,
                server,
                fanOut.half(),
                fanOut.most(),
                answer.half(),
                answer.most(),
                memory,
                empty,
                heap,
                counts,
                load);
    }

    /// This one beside another.
    String beside(LoadRow other) {
        return String.format(
                Locale.ROOT,
                "%,d seats, %s / %s: fan-out p99 %.2f, answer p99 %.2f, memory %.2f",
                seats,
                server,
                other.server,
                fanOut.most() / other.fanOut.most(),
                answer.most() / other.answer.most(),
                (double) memory / other.memory);
    }
}
