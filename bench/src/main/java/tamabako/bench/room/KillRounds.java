package tamabako.bench.room;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/// Kills the desk with `kill -9` in the middle of a round, starts it again on the same class book,
/// and lets the same seats go on: `KillRounds [ROUNDS]`, 100 where nothing is said. Every answer
/// that was acknowledged before a kill has to be there after it, and none twice.
public final class KillRounds {

    private static final int SEATS = 20;

    private KillRounds() {}

    /// Runs the rounds and prints what was lost.
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int rounds = arguments.length == 0 ? 100 : Integer.parseInt(arguments[0]);
        Path folder = Files.createTempDirectory("kill-rounds");
        KilledSeats seats = new KilledSeats(SEATS);
        for (int round = 1; round <= rounds; round++) {
            ServerProcess server = new ServerProcess("desk", folder);
            seats.compare(server);
            server.tell(round == 1 ? "start" : "check");
            seats.answerUntilKilled(server, 600 + 37L * round % 700);
            if (round % 10 == 0) {
                System.out.println(told(round, seats));
            }
        }
        try (ServerProcess server = new ServerProcess("desk", folder)) {
            seats.compare(server);
        }
        System.out.println(told(rounds, seats));
    }

    private static String told(int rounds, KilledSeats seats) {
        return String.format(
                Locale.ROOT,
                "%d rounds with kill -9: %d answers acknowledged, %d lost, %d kept that were not"
                        + " acknowledged",
                rounds,
                seats.acknowledged(),
                seats.lost(),
                seats.keptUnasked());
    }
}
