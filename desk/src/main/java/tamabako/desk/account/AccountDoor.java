package tamabako.desk.account;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tamabako.desk.web.Access;
import tamabako.desk.web.Caller;
import tamabako.desk.web.Door;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Verb;
import tamabako.desk.web.Who;
import tamabako.records.ClassBook;
import tamabako.records.SignIn;
import tamabako.records.Teacher;

/// The one gate of the desk.
public final class AccountDoor implements Door {

    /// Who can reach the desk at all.
    public enum Reach {

        /// Only this computer.
        THIS_COMPUTER,

        /// Others in the network too.
        NETWORK
    }

    /// How the desk is kept.
    enum Guard {

        /// It has an owner: whoever wants in signs in.
        PASSWORDS,

        /// Without passwords, for whoever sits at this computer.
        NONE,

        /// That is still to be chosen.
        NOT_YET
    }

    private static final Logger LOG = LoggerFactory.getLogger(AccountDoor.class);
    private static final String WITHOUT = "accounts.without-password";
    private static final Duration LOOKED_UP_EVERY = Duration.ofSeconds(5);

    private final ClassBook book;
    private final Reach reach;
    private final InstantSource clock;
    private final Passwords passwords = new Passwords();
    private final SigningIn signingIn;
    private final Optional<String> setupCode;
    private volatile boolean withoutPasswords;
    private volatile Looked looked = new Looked(Guard.NOT_YET, Instant.MIN);

    /// What was found when the book was last asked.
    private record Looked(Guard guard, Instant at) {}

    /// @param withoutPasswords whether this run of the program asks for no passwords, whatever was
    ///   chosen before
    /// @throws IllegalArgumentException if it asks for none although others reach the desk
    public AccountDoor(ClassBook book, Reach reach, boolean withoutPasswords, InstantSource clock) {
        if (withoutPasswords && reach == Reach.NETWORK) {
            throw new IllegalArgumentException("Others reach this desk; it needs passwords.");
        }
        this.book = book;
        this.reach = reach;
        this.withoutPasswords = withoutPasswords;
        this.clock = clock;
        this.signingIn = new SigningIn(book, clock, passwords);
        boolean isOpenToAll = reach == Reach.NETWORK && !book.accounts().hasOwner();
        this.setupCode = isOpenToAll ? Optional.of(OneTimeCode.fresh()) : Optional.empty();
    }

    /// A door without passwords, for whoever sits at this computer.
    public static AccountDoor open(ClassBook book) {
        return new AccountDoor(book, Reach.THIS_COMPUTER, true, InstantSource.system());
    }

    /// What the book keeps of a token that a browser carries.
    public static String digest(String token) {
        return new Token(token).digest();
    }

    /// What has to be typed to become the owner, where others can reach the desk and it has none.
    public Optional<String> setupCode() {
        return setupCode;
    }

    @Override
    public Who who(Caller caller) {
        return switch (guard()) {
            case NONE -> new Who.AtThisComputer();
            case NOT_YET -> new Who.Nobody();
            case PASSWORDS -> signingIn.see(caller).flatMap(this::who).orElseGet(Who.Nobody::new);
        };
    }

    private Optional<Who> who(SignIn signIn) {
        return book.teachers()
                .find(signIn.teacherId())
                .map(teacher ->
                        new Who.SignedIn(
                                teacher.id(), teacher.name(), access(teacher), signIn.id()));
    }

    private static Access access(Teacher teacher) {
        return switch (teacher.role()) {
            case OWNER -> Access.OWNER;
            case TEACHER -> Access.TEACHER;
            case ASSISTANT -> Access.ASSISTANT;
        };
    }

    @Override
    public Optional<Reply> turnAway(Who who, Access access, Verb verb, String here) {
        if (access == Access.ANYONE) {
            return Optional.empty();
        }
        if (guard() == Guard.NOT_YET) {
            return Optional.of(Reply.seeOther("/first"));
        }
        if (who.may(access)) {
            return Optional.empty();
        }
        return switch (who) {
            case Who.SignedIn someone -> {
                LOG.warn("{} was refused at {}.", someone.id(), path(here));
                yield Optional.of(Reply.trouble(403, "not-allowed"));
            }
            case Who.Nobody _, Who.AtThisComputer _ -> Optional.of(outside(verb, here));
        };
    }

    /// Someone who looks is sent to sign in and comes back. A form stays in the browser's page, to
    /// be sent again.
    private static Reply outside(Verb verb, String here) {
        return switch (verb) {
            case GET ->
                    Reply.seeOther(
                            here.equals("/")
                                    ? "/sign-in"
                                    : "/sign-in?back="
                                            + URLEncoder.encode(here, StandardCharsets.UTF_8));
            case POST -> Reply.trouble(401, "signed-out");
        };
    }

    private static String path(String here) {
        return here.split("\\?", 2)[0];
    }

    /// How the desk is kept. That it has an owner never ends; all else is looked up again now and
    /// then, because another copy of the program may have changed it.
    Guard guard() {
        Looked last = looked;
        if (last.guard() == Guard.PASSWORDS
                || last.at().isAfter(clock.instant().minus(LOOKED_UP_EVERY))) {
            return last.guard();
        }
        Guard guard = lookUp();
        looked = new Looked(guard, clock.instant());
        return guard;
    }

    private Guard lookUp() {
        if (withoutPasswords) {
            return Guard.NONE;
        }
        if (book.accounts().hasOwner()) {
            return Guard.PASSWORDS;
        }
        boolean chosen = book.settings().find(WITHOUT).isPresent();
        return chosen && reach == Reach.THIS_COMPUTER ? Guard.NONE : Guard.NOT_YET;
    }

    /// Notes that the desk goes on without passwords.
    void goOnWithout() {
        if (reach == Reach.NETWORK) {
            throw new IllegalStateException("Others reach this desk; it needs passwords.");
        }
        book.settings().keep(WITHOUT, "chosen");
        looked = new Looked(Guard.NONE, clock.instant());
    }

    /// Notes that the desk has an owner now.
    void hasOwner() {
        withoutPasswords = false;
        looked = new Looked(Guard.PASSWORDS, clock.instant());
    }

    /// Tells the time.
    InstantSource clock() {
        return clock;
    }

    /// Hashes passwords.
    Passwords passwords() {
        return passwords;
    }

    /// Who can reach the desk.
    Reach reach() {
        return reach;
    }

    /// Where names and passwords are compared.
    SigningIn signingIn() {
        return signingIn;
    }
}
