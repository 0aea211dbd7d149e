package tamabako.records;

import java.time.Instant;

/// A wish that a teacher keeps under a name.
///
/// @param id opaque
/// @param name what the teacher calls it; no two have the same
/// @param fields the fields of the wish form, as they stand in its address: `kind=column&rows=5`
/// @param keptAt when it was kept last
public record Template(String id, String name, String fields, Instant keptAt) {}
