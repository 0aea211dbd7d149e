/// The setting of papers (sakudai): a grade's table becomes a paper whose problems keep the table
/// and the setters' customs, in as many equal forms as a room needs.
///
/// [Paper] is what comes out: its sections in their order, each with its problems. [PaperMaker]
/// makes it, [PaperForms] makes forms that ask for the same work, [FormReport] counts that work,
/// and a [PaperId] names a form without telling anything about it.
@NullMarked
package tamabako.problems.setting;

import org.jspecify.annotations.NullMarked;
