package tamabako.bench.making;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.making.ReadyMaker;

/// Columns in a second, all sides in one run.
///
/// Every side is measured for a short while, one after the other, again and again; the medians
/// stand. Time is that of the thread on a processor, so that work of others on the machine counts
/// as little as can be.
///
/// `MakingBench [SECONDS [ROUNDS]]`: how long each side runs in a round, and how many rounds.
public final class MakingBench {

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final double SECOND = 1e9;

    /// Columns of each side that are looked at before anything is measured.
    private static final int LOOKED_AT = 20;

    private static final int SETS = 201;

    private final double seconds;
    private final int rounds;
    private long number;

    private MakingBench(double seconds, int rounds) {
        this.seconds = seconds;
        this.rounds = rounds;
    }

    /// Runs all; takes about a minute and a half with half a second and five rounds.
    public static void main(String[] arguments) {
        double seconds = arguments.length > 0 ? Double.parseDouble(arguments[0]) : 0.5;
        int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5;
        MakingBench bench = new MakingBench(seconds, rounds);
        say("load average %.1f", ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        Task direct = Task.DIRECT;
        bench.compare(
                direct,
                List.of(Solved.fresh(direct), Solved.kept(direct), Thrown.rows(direct)),
                Thrown.plain(direct));
        Task rich = Task.RICH;
        bench.compare(
                rich,
                List.of(Solved.fresh(rich), Solved.kept(rich), Thrown.bag(rich)),
                Thrown.plain(rich));
        Task balanced = Task.BALANCED;
        bench.compare(
                balanced,
                List.of(Solved.fresh(balanced), Solved.kept(balanced)),
                Thrown.bag(balanced));
        sets();
        say("load average %.1f", ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    /// @param last the peer that is named last in the results
    private void compare(Task task, List<Peer> peers, Peer last) {
        List<Peer> all = new ArrayList<>();
        all.add(Ours.maker(task));
        all.add(Ours.drawing(task));
        all.addAll(peers);
        all.add(last);
        all.forEach(peer -> look(task, peer));
        double[][] rates = new double[all.size()][rounds];
        for (int round = 0; round < rounds; round++) {
            for (int i = 0; i < rates.length; i++) {
                rates[i][round] = rate(all.get(i));
            }
        }
        say("%n%-28s %14s %22s %14s", task, "columns/s", "fewest to most", "ReadyMaker is");
        for (int i = 0; i < rates.length; i++) {
            Arrays.sort(rates[i]);
            double median = rates[i][rounds / 2];
            say(
                    "%-28s %,14.1f %,10.1f to %,10.1f %,12.1f x",
                    all.get(i).name(),
                    median,
                    rates[i][0],
                    rates[i][rounds - 1],
                    rates[0][rounds / 2] / median);
        }
    }

    /// Stops the run if a peer makes a column that is not as asked.
    private void look(Task task, Peer peer) {
        Hand hand = new Hand();
        int looked = peer.name().equals("plain rejection") ? 1 : LOOKED_AT;
        for (int i = 0; i < looked; i++) {
            long[] rows = peer.make(++number);
            if (!task.isGrantedBy(rows, hand)) {
                throw new IllegalStateException(
                        peer.name() + " made " + Arrays.toString(rows) + " for " + task);
            }
        }
    }

    private double rate(Peer peer) {
        long from = CLOCK.getCurrentThreadCpuTime();
        long until = from + (long) (seconds * SECOND);
        long made = 0;
        long now;
        do {
            int before = (int) Math.min(64, made);
            for (int i = 0; i <= before; i++) {
                peer.make(++number);
            }
            made += before + 1;
            now = CLOCK.getCurrentThreadCpuTime();
        } while (now < until);
        return made * SECOND / (now - from);
    }

    /// Sets of twenty whose strokes lie within 3 in a hundred, each held to that by hand.
    private static void sets() {
        ReadyMaker maker = ReadyMaker.of(Task.RICH.wish().withStrokesWithin(3));
        double[] milliseconds = new double[SETS];
        Hand hand = new Hand();
        for (int i = 0; i < SETS; i++) {
            long from = CLOCK.getCurrentThreadCpuTime();
            List<Problem> set = Ours.made(maker.make(20, i, Set.of()));
            milliseconds[i] = (CLOCK.getCurrentThreadCpuTime() - from) / 1e6;
            int least = Integer.MAX_VALUE;
            int most = 0;
            for (Problem problem : set) {
                if (!Task.RICH.isGrantedBy(Ours.rows((Column) problem), hand)) {
                    throw new IllegalStateException("Not as asked: " + problem);
                }
                least = Math.min(least, hand.strokes());
                most = Math.max(most, hand.strokes());
            }
            if (100 * most > 103 * least) {
                throw new IllegalStateException(least + " to " + most + " strokes in one set");
            }
        }
        Arrays.sort(milliseconds);
        say(
                "%n20 rich columns, strokes within 3 in a hundred: median %.2f ms, nine in ten"
                        + " within %.2f ms, slowest %.2f ms (%d sets)",
                milliseconds[SETS / 2], milliseconds[SETS * 9 / 10], milliseconds[SETS - 1], SETS);
    }

    private static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, format + "%n", values);
    }
}
