/// The demo class: the Kingfisher soroban room in the harbour town of Port Linnet, invented.
///
/// Two groups, fourteen pupils, a few sheets, and what each pupil handed in. Nothing in it is
/// written by hand: a [DemoPupil] works every problem and now and then makes a slip of a known
/// kind, drawn from the seed of the pupil and the sheet; so the desk has something true to find.
@NullMarked
package tamabako.desk.demo;

import org.jspecify.annotations.NullMarked;
