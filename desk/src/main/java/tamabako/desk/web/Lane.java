package tamabako.desk.web;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;

/// The visitors whose connections belong to one I/O thread. What wakes thousands of them is one
/// task of the thread.
final class Lane {

    private final Executor thread;
    private final Queue<Hearer> woken = new ConcurrentLinkedQueue<>();
    private final AtomicBoolean scheduled = new AtomicBoolean();

    Lane(Executor thread) {
        this.thread = thread;
    }

    /// Runs that on the lane's thread.
    void run(Runnable task) {
        thread.execute(task);
    }

    /// Gives that visitor a turn soon.
    void wake(Hearer hearer) {
        woken.add(hearer);
        if (scheduled.compareAndSet(false, true)) {
            thread.execute(this::turn);
        }
    }

    private void turn() {
        scheduled.set(false);
        for (Hearer next = woken.poll(); next != null; next = woken.poll()) {
            next.turn();
        }
    }
}
