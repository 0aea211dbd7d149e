/// Simulated pupils, who read, work and write one thing after another and slip where chance has it,
/// bead by bead: what comes after a slip is done well, on the frame as it then is.
///
/// They are written from the rules of the bead alone, apart from the slip finder, which is tried on
/// them: the finder knows what each slip changes, these pupils only what each hand does.
/// [ColumnPupil], [ProductPupil] and [QuotientPupil] give what is written; [Fate] decides the slips
/// and keeps which were made. The seed decides all.
@NullMarked
package tamabako.insight.simulation;

import org.jspecify.annotations.NullMarked;
