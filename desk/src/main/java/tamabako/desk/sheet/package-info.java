/// Making a sheet: the wish form with its preview, the kept sheet, and its print.
///
/// A wish is in the address (`/make?kind=column&rows=5&digits=2&seed=31`), so that a teacher can
/// keep it, send it, or change the language without losing it. The same wish with the same seed
/// makes the same problems; "make others" takes another seed. What cannot be made is told beside
/// the field that asks for it.
@NullMarked
package tamabako.desk.sheet;

import org.jspecify.annotations.NullMarked;
