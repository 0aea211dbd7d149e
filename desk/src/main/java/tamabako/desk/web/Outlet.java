package tamabako.desk.web;

/// Where a visitor hears what comes by and by. Nothing here waits for the visitor.
public interface Outlet {

    /// Lets the visitor hear that from now on, until it is over or the visitor goes. To be called
    /// once.
    void tell(Telling telling);

    /// Says that there is something new to tell. Any thread may say so, as often as it likes.
    void wake();

    /// Lets the visitor go at once, whatever was not told yet.
    void cut();
}
