package tamabako.records;

/// A group of pupils that comes at one time.
///
/// @param id opaque
/// @param name what the teacher calls it
/// @param demo whether it belongs to the demo class
public record Group(String id, String name, boolean demo) {

    /// A group of the teacher's own, under a fresh identity.
    public static Group of(String name) {
        return new Group(Identity.fresh(), name, false);
    }
}
