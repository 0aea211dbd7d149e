package tamabako.paper;

/// Hears how far the print has come.
@FunctionalInterface
public interface Progress {

    /// Nobody listens.
    Progress UNHEARD = (done, of) -> {};

    /// So many papers are done, of so many.
    void done(int done, int of);
}
