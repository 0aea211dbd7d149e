/// Ladders as files: [LadderFile] reads one and says every mistake with its line and how to mend
/// it; [Ladders] are those that are shipped. docs/ladders.md tells the format to teachers.
@NullMarked
package tamabako.problems.grade.file;

import org.jspecify.annotations.NullMarked;
