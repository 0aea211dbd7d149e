package tamabako.records;

import java.time.Instant;
import tamabako.problems.Sheet;

/// A sheet in the class book.
///
/// @param sheet the sheet
/// @param keptAt when it was put there
/// @param demo whether it belongs to the demo class
public record KeptSheet(Sheet sheet, Instant keptAt, boolean demo) {}
