/// Problems and attempts as JSON, one object a line.
///
/// `{"id":"1","kind":"column","rows":["54","-29","38"]}` is the column 54 - 29 + 38, and
/// `{"problem":{...},"answer":"63"}` is an attempt at it. Numbers are strings, so that nothing is
/// lost on the way; JSON numbers are read too where they are exact. What cannot be read throws an
/// [tamabako.problems.Unreadable] that names the field.
///
/// [ProblemJson] and [AttemptJson] read and write; [Fields] takes one object apart.
@NullMarked
package tamabako.problems.json;

import org.jspecify.annotations.NullMarked;
