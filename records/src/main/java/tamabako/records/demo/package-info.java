/// The demo class: the Kingfisher soroban room in the invented harbour town of Port Linnet, with
/// two groups, fourteen pupils and work that simulated pupils handed in. All of it is marked as
/// demo and goes with one click.
@NullMarked
package tamabako.records.demo;

import org.jspecify.annotations.NullMarked;
