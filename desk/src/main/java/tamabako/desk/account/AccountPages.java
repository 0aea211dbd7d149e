package tamabako.desk.account;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;

/// The pages on which people become owner, sign in and out, and look after accounts.
public final class AccountPages implements Routes {

    private final List<Routes> pages;

    /// @param zone where the days are told
    public AccountPages(ClassBook book, AccountDoor door, InstantSource clock, ZoneId zone) {
        NewPassword choosing = new NewPassword(book, door.passwords());
        this.pages =
                List.of(
                        new FirstPages(book, door, choosing),
                        new SignInPages(door, choosing),
                        new OwnPages(book, door, choosing, zone),
                        new PeoplePages(book, door, clock));
    }

    @Override
    public List<Route> routes() {
        return pages.stream().flatMap(page -> page.routes().stream()).toList();
    }

    @Override
    public List<String> wordFiles() {
        return List.of("accounts");
    }
}
