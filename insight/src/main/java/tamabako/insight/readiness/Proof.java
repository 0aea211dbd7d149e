package tamabako.insight.readiness;

/// What stands behind the figures of a section.
///
/// @param answers how many answers in its field are known
/// @param timed how many of them with their time
/// @param more about how many problems more of the section are needed before anything is said; 0
///   where there is enough
public record Proof(int answers, int timed, int more) {

    /// So many problems as hard as those of the section have to be known.
    public static final int NEEDED = 10;

    /// So many times have to be known where there is a clock.
    public static final int NEEDED_TIMES = 5;

    /// What there is of one section.
    static Proof of(Standing standing, Outline.Part part, boolean clocked) {
        int answers = standing.answers(part.field());
        int timed = standing.timed(part.field());
        double worth = standing.worth(part.field(), Math.max(1e-6, part.slips()));
        int lacking = (int) Math.ceil(Math.max(0, NEEDED - worth) - 1e-9);
        int untimed = clocked ? Math.max(0, NEEDED_TIMES - timed) : 0;
        return new Proof(answers, timed, Math.max(lacking, untimed));
    }

    /// Whether there is enough.
    public boolean isEnough() {
        return more == 0;
    }
}
