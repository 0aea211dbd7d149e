/// The pages of the class book: groups and their pupils, who came, notes, results, and everything
/// that is known of one pupil, to be read, taken along or erased.
///
/// `/book` lists the groups; `/book/groups/{id}` is one of them, `/book/pupils/{id}` one pupil. The
/// page of a pupil is made of parts ([WorkPart], [NotesPart] ...), each a small record with a
/// template of its own under `jte/book`; a further part is one more of them in [PupilView].
@NullMarked
package tamabako.desk.book;

import org.jspecify.annotations.NullMarked;
