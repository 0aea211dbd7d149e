package tamabako.desk.web;

/// Whom a route is for: the least that someone must be to use it. Whoever may do more may do this
/// too.
///
/// The order is that of the constants: an owner may all that a teacher may, a teacher all that an
/// assistant may.
public enum Access {

    /// Everybody, also before the desk has an owner: signing in, choosing a language.
    ANYONE,

    /// Pupils, who have no account: the door lets everybody pass once the desk is set up, and the
    /// page itself looks at what the pupil carries, such as the token of a seat.
    PUPIL,

    /// Those who help at lessons: they make, hand out and mark, and neither erase, nor back up, nor
    /// touch accounts.
    ASSISTANT,

    /// Teachers. A route that says nothing is for them.
    TEACHER,

    /// The one to whom the desk belongs.
    OWNER;

    /// Whether someone who may do this much may use a route that is for `wanted`.
    public boolean suffices(Access wanted) {
        return compareTo(wanted) >= 0;
    }
}
