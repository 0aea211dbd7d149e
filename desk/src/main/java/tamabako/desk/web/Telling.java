package tamabako.desk.web;

import java.util.Optional;

/// What one visitor is told by and by. It is asked for the next piece only when the visitor can
/// take it, so nothing piles up for a slow one.
public interface Telling {

    /// The next piece; empty where there is nothing new. The bytes may be shared with other
    /// visitors and are not changed.
    Optional<byte[]> next();

    /// Whether nothing more comes after what [#next] still gives.
    boolean isOver();

    /// The visitor went, or everything was told. Comes once.
    void gone();
}
