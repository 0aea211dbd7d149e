/// What the tests of every module share: properties run over seeds, and golden files.
///
/// This is test scope only; nothing that ships knows it.
@NullMarked
package tamabako.testkit;

import org.jspecify.annotations.NullMarked;
