package tamabako.insight.slip;

import java.util.Arrays;

/// The steps of a working, one packed `int` each: from the lowest bit 6 bits rod, 5 digit, 4 count
/// before, 2 role, 14 where.
///
/// Rods are counted from 0 at the working's last place. Every rod is in plain form.
final class StepLog {

    /// What a step is in its entry.
    enum Role {
        /// The digit itself.
        ENTRY,
        /// One carried to this rod.
        CARRY,
        /// One borrowed from this rod.
        BORROW,
        /// A loan from beyond the frame, made or given back.
        LOAN
    }

    private static final Role[] ROLES = Role.values();

    private int[] steps = new int[256];
    private int size;

    int size() {
        return size;
    }

    /// Notes that `digit` (-9 to 9, not 0) went on a rod that held `before`.
    @SuppressWarnings("EnumOrdinal")
    void note(int rod, int digit, int before, Role role, int where) {
        if (size == steps.length) {
            steps = Arrays.copyOf(steps, 2 * size);
        }
        steps[size++] =
                rod | ((digit + 9) << 6) | (before << 11) | (role.ordinal() << 15) | (where << 17);
    }

    int rod(int i) {
        return steps[i] & 0x3F;
    }

    int digit(int i) {
        return (steps[i] >> 6 & 0x1F) - 9;
    }

    int before(int i) {
        return steps[i] >> 11 & 0xF;
    }

    /// The count of the rod after the step.
    int after(int i) {
        return (before(i) + digit(i) + 10) % 10;
    }

    /// Whether the step passes ten: a carry follows it or a borrow went before it.
    boolean passesTen(int i) {
        int sum = before(i) + digit(i);
        return sum < 0 || sum > 9;
    }

    /// Whether the step is a carry or borrow itself.
    boolean isCarried(int i) {
        Role role = role(i);
        return role == Role.CARRY || role == Role.BORROW;
    }

    Role role(int i) {
        return ROLES[steps[i] >> 15 & 3];
    }

    /// The packed part of the sum, as in [Code].
    int where(int i) {
        return steps[i] >>> 17;
    }

    @Override
    public String toString() {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < size; i++) {
            lines.append(
                    "rod %d: %+d on %d, %s, %d%n"
                            .formatted(rod(i), digit(i), before(i), role(i), where(i)));
        }
        return lines.toString();
    }
}
