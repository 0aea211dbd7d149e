/// How pupils get on: what the work in the class book shows of mastery, pace, slips and readiness,
/// for the teacher and, in plain words, for the family.
///
/// The judgements are those of [tamabako.insight]; here the work is gathered for them and what they
/// say is put on pages. Every figure says how sure it is, and none is shown below the evidence that
/// it needs.
@NullMarked
package tamabako.desk.progress;

import org.jspecify.annotations.NullMarked;
