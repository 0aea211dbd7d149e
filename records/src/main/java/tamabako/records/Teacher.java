package tamabako.records;

/// Someone who teaches here.
///
/// @param id opaque
/// @param name what pupils call them
/// @param role what they may do
/// @param demo whether they belong to the demo class
public record Teacher(String id, String name, Role role, boolean demo) {

    /// What someone does here.
    public enum Role {

        /// The one to whom the desk belongs; a class book has one at most.
        OWNER,

        /// May do all but look after accounts.
        TEACHER,

        /// Helps at lessons.
        ASSISTANT
    }
}
