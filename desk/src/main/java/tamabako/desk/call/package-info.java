/// Calling: the plan of what is called, the caller's page that speaks or prompts, and its sound.
///
/// The whole plan stands in the address of the caller's page, with the seed of the sums, so that
/// the page, its sound and a reload are about the same calls. Nothing is kept on the server. Who
/// was right is counted by raised hands, on the page alone; where pupils answer in another way,
/// their counts can be given to the page by the event `call-hands` (static/js/call/tally.js).
@NullMarked
package tamabako.desk.call;

import org.jspecify.annotations.NullMarked;
