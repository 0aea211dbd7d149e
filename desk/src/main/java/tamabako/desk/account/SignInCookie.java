package tamabako.desk.account;

import java.util.Optional;
import tamabako.desk.web.Caller;

/// The cookie that carries the token.
///
/// It is for this host alone, out of reach of scripts, and not sent with the forms of other sites.
/// Where the way to the desk is encrypted it never goes another way. It ends with the browser; the
/// desk ends it earlier.
final class SignInCookie {

    private static final String PLAIN = "sign-in";
    private static final String ENCRYPTED = "__Host-sign-in";
    private static final String HOW = "; Path=/; HttpOnly; SameSite=Lax";

    private SignInCookie() {}

    /// The token that came, if one did.
    static Optional<Token> read(Caller caller) {
        return caller.cookie(name(caller)).filter(text -> !text.isEmpty()).map(Token::new);
    }

    /// The header value that gives a browser its token.
    static String give(Token token, Caller caller) {
        return name(caller) + "=" + token.text() + HOW + secure(caller);
    }

    /// The header value that takes it away.
    static String take(Caller caller) {
        return name(caller) + "=; Max-Age=0" + HOW + secure(caller);
    }

    private static String name(Caller caller) {
        return caller.encrypted() ? ENCRYPTED : PLAIN;
    }

    private static String secure(Caller caller) {
        return caller.encrypted() ? "; Secure" : "";
    }
}
