package tamabako.desk.command;

/// How a command ends.
final class Exit {

    /// All done.
    static final int DONE = 0;

    /// Something in the input was wrong; it was told line by line, and the rest is done.
    static final int SOME_WRONG = 1;

    /// The command could not run.
    static final int COULD_NOT_RUN = 2;

    private Exit() {}
}
