package tamabako.insight.slip;

import java.util.Arrays;

/// Single slips, grouped by how far off they leave the answer.
final class GroupedSlips {

    private final Events events;
    private final long[] differences;
    private final int[] starts;
    private final int[] endsOfWork;
    private final int[] order;
    private final int[] slots;
    private final int workAnswers;

    GroupedSlips(Events events) {
        this.events = events;
        Distinct distinct = new Distinct(events);
        this.differences = distinct.sorted();
        this.starts = new int[differences.length + 1];
        this.endsOfWork = new int[differences.length];
        this.order = new int[events.size()];
        this.slots = new int[events.size()];
        this.workAnswers = group(distinct.groups());
    }

    Events events() {
        return events;
    }

    /// How many wrong answers the slips lead to.
    int answers() {
        return differences.length;
    }

    /// How many different answers slips of the work, without those of the pencil, lead to.
    int workAnswers() {
        return workAnswers;
    }

    /// The group of the slips that leave the answer `tenths` off; -1 if none do.
    int group(long tenths) {
        return Math.max(-1, Arrays.binarySearch(differences, tenths));
    }

    /// How many tenths the slips of `group` leave the answer off.
    long tenths(int group) {
        return differences[group];
    }

    /// The place in the order of the first slip of `group`.
    int start(int group) {
        return starts[group];
    }

    /// The place after the last slip of the work in `group`; slips of the pencil follow.
    int endOfWork(int group) {
        return endsOfWork[group];
    }

    /// The place after the last slip of `group`.
    int end(int group) {
        return starts[group + 1];
    }

    /// The slip at a place in the order, as an index of [#events()].
    int at(int place) {
        return order[place];
    }

    /// The [Slot] of the slip at a place in the order.
    int slot(int place) {
        return slots[place];
    }

    /// The slips that leave the answer `tenths` off, as they would be found alone.
    Events only(long tenths) {
        Events found = Events.toward(tenths);
        int group = group(tenths);
        if (group >= 0) {
            for (int place = start(group); place < end(group); place++) {
                found.add(events, at(place));
            }
        }
        return found;
    }

    /// Counting sort by difference; slips of one difference keep their order, so that those of the
    /// pencil come last. Gives the number of groups with slips of the work.
    private int group(int[] groups) {
        for (int i = 0; i < groups.length; i++) {
            starts[groups[i] + 1]++;
        }
        for (int group = 0; group < differences.length; group++) {
            starts[group + 1] += starts[group];
        }
        int[] next = starts.clone();
        int withWork = 0;
        for (int i = 0; i < groups.length; i++) {
            if (i == events.ofWork()) {
                System.arraycopy(next, 0, endsOfWork, 0, endsOfWork.length);
            }
            int place = next[groups[i]]++;
            order[place] = i;
            slots[place] = Slot.of(events.code(i));
        }
        if (events.ofWork() == groups.length) {
            System.arraycopy(next, 0, endsOfWork, 0, endsOfWork.length);
        }
        for (int group = 0; group < endsOfWork.length; group++) {
            withWork += endsOfWork[group] > starts[group] ? 1 : 0;
        }
        return withWork;
    }
}
