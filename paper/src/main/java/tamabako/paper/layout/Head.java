package tamabako.paper.layout;

import java.util.List;

/// What stands at the top of the pages of a part.
interface Head {

    /// Lays the head on the first page.
    void lay(Flow flow);

    /// What later pages have at the top, so that loose leaves find together again.
    ///
    /// @param section the section that goes on there; empty where another begins
    List<Mark> later(String section);

    /// The height of what later pages have at the top.
    double laterHeight();
}
