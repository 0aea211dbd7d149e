/// Accounts: who may do what at the desk, and how they are known.
///
/// [AccountDoor] is the one gate. It knows three ways in: with passwords, once the desk has an
/// owner; without any, for whoever sits at this computer, where they chose so and nobody else can
/// reach the desk; and not yet, before either was chosen, when every page leads to `/first`.
///
/// [SigningIn] is the one place where a name and a password are compared, as slowly for a name that
/// nobody has as for one that somebody has. [Passwords] hashes, [Strength] says what is too easy to
/// guess, [Throttle] slows guessing down. A browser is known by a [Token] in a cookie, of which
/// only the digest is kept:
///
/// ```java
/// Token token = Token.fresh();
/// book.signIns().keep(new SignIn(Identity.fresh(), token.digest(), teacher.id(), address, now, now));
/// ```
@NullMarked
package tamabako.desk.account;

import org.jspecify.annotations.NullMarked;
