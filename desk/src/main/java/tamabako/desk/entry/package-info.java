/// Paper work: the answers of a whole group to one sheet, typed from a pile of paper.
///
/// `/entry` asks for the number printed on the sheet, or on the form of a paper; `/entry/{sheet}`
/// asks for the group, and then shows one line a pupil. Every line is a form of its own, which
/// keeps the work of one pupil. With the page's script each answer is marked as soon as it is typed
/// and kept as a draft, and Enter goes on from field to field and from pupil to pupil.
@NullMarked
package tamabako.desk.entry;

import org.jspecify.annotations.NullMarked;
