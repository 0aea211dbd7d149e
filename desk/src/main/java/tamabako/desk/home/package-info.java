/// The desk's first page: what can be done, the groups and pupils, the last sheets and the last
/// marked work.
///
/// A teacher who opens `/` finds the groups first, each with its next practice, how it is going and
/// who is there today, then three stations in the order of a lesson: make a sheet, mark it, work a
/// sum. The demo class is marked as such and goes with one click.
@NullMarked
package tamabako.desk.home;

import org.jspecify.annotations.NullMarked;
