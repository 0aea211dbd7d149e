package tamabako.desk.room;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/// The seats of a room by number. It never changes: another seat makes other seats, which share all
/// but a block of [#BLOCK] seats with these, so that a big room takes an answer as quickly as a
/// small one.
public final class Seats {

    /// No seats.
    public static final Seats NONE = new Seats(new Seat[0][], 0);

    private static final int BLOCK = 64;

    private final Seat[][] blocks;
    private final int count;

    private Seats(Seat[][] blocks, int count) {
        this.blocks = blocks;
        this.count = count;
    }

    /// How many seats were ever taken; the next one has the number after it.
    public int count() {
        return count;
    }

    /// The seat of that number, if it was ever taken.
    public Optional<Seat> find(int number) {
        return number < 1 || number > count ? Optional.empty() : Optional.of(at(number));
    }

    /// Every seat that was not removed, in the order of the numbers.
    public Stream<Seat> present() {
        return all().filter(seat -> !seat.removed());
    }

    /// Every seat that was ever taken.
    public Stream<Seat> all() {
        return Arrays.stream(blocks).flatMap(Arrays::stream).limit(count);
    }

    /// These seats and that one behind them.
    Seats and(Seat seat) {
        int block = count / BLOCK;
        Seat[][] more = Arrays.copyOf(blocks, Math.max(blocks.length, block + 1));
        more[block] = Arrays.copyOf(block < blocks.length ? blocks[block] : new Seat[0], BLOCK);
        more[block][count % BLOCK] = seat;
        return new Seats(more, count + 1);
    }

    /// These seats with the one of that number changed.
    Seats change(int number, UnaryOperator<Seat> change) {
        int block = (number - 1) / BLOCK;
        Seat[][] changed = blocks.clone();
        changed[block] = blocks[block].clone();
        changed[block][(number - 1) % BLOCK] = change.apply(at(number));
        return new Seats(changed, count);
    }

    /// All of them changed.
    Seats changeAll(UnaryOperator<Seat> change) {
        Seat[] all = all().map(change).toArray(Seat[]::new);
        Seat[][] fresh = new Seat[blocks.length][];
        for (int block = 0; block < fresh.length; block++) {
            fresh[block] = Arrays.copyOfRange(all, block * BLOCK, (block + 1) * BLOCK);
        }
        return new Seats(fresh, count);
    }

    private Seat at(int number) {
        return blocks[(number - 1) / BLOCK][(number - 1) % BLOCK];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Seats seats && Arrays.deepEquals(blocks, seats.blocks);
    }

    @Override
    public int hashCode() {
        return Arrays.deepHashCode(blocks);
    }

    @Override
    public String toString() {
        return all().toList().toString();
    }
}
