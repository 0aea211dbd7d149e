/// All that the class book knows of one pupil, in one piece: to be read as a page, or written as
/// JSON for whoever asks for a copy.
///
/// `PupilExport.of(book, pupil)` gathers it; `PupilJson.write(export, now)` writes it.
@NullMarked
package tamabako.records.export;

import org.jspecify.annotations.NullMarked;
