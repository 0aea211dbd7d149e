package tamabako.desk.work;

import java.util.List;
import tamabako.desk.web.Access;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;

/// The pages of worked sums and of the free frame.
public final class WorkPages implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/work", WorkPage::answer).forWhom(Access.ASSISTANT),
                Route.get("/frame", FreeFrame::answer).forWhom(Access.ASSISTANT));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("work");
    }
}
