package tamabako.desk.web;

/// Who stands before the desk.
public sealed interface Who {

    /// Someone who is not signed in: a pupil, or a stranger.
    record Nobody() implements Who {}

    /// Whoever sits at this computer, where the desk is kept without passwords. They may do all.
    record AtThisComputer() implements Who {}

    /// Someone who signed in.
    ///
    /// @param id the teacher's identity in the class book
    /// @param name what they are called
    /// @param role what they may do
    /// @param signIn the identity of this sign-in, one of perhaps several
    record SignedIn(String id, String name, Access role, String signIn) implements Who {}

    /// How much they may do.
    default Access access() {
        return switch (this) {
            case Nobody _ -> Access.PUPIL;
            case AtThisComputer _ -> Access.OWNER;
            case SignedIn signedIn -> signedIn.role();
        };
    }

    /// Whether they may use what is for `wanted`.
    default boolean may(Access wanted) {
        return access().suffices(wanted);
    }
}
