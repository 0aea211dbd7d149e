package tamabako.records;

/// A group of pupils that comes at one time.
///
/// @param id opaque
/// @param name what the teacher calls it
/// @param demo whether it belongs to the demo class
public record Group(String id, String name, boolean demo) {}
