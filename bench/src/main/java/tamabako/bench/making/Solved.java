package tamabako.bench.making;

/// What a constraint solver finds, with random values and restarts.
final class Solved {

    private Solved() {}

    /// Modelled anew for each column.
    static Peer fresh(Task task) {
        return new Peer(
                "choco-solver, fresh model",
                number -> new SolverModel(task.forSolver()).solve(number));
    }

    /// One model for all columns.
    static Peer kept(Task task) {
        SolverModel model = new SolverModel(task.forSolver());
        return new Peer("choco-solver, model kept", model::solve);
    }
}
