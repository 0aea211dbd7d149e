/// What the problems module has to say to people, in their language.
///
/// A reason is a record that is [Sayable]: its name picks a template, its components fill it.
/// `UnknownKey("row", ["id", "kind", "rows"])` picks `unreadable.unknown-key` and becomes "The key
/// "row" is not known here. Known keys: id, kind, rows."
///
/// The templates of a language stand in one file, `words_<language>.properties`, beside this
/// package's classes; adding a language is adding a file. This package knows no other of the
/// module.
@NullMarked
package tamabako.problems.words;

import org.jspecify.annotations.NullMarked;
