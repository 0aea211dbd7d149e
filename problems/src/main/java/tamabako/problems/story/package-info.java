/// Word problems (ōyō keisan): stories of everyday sums, told in English and Japanese with the same
/// numbers.
///
/// A [StoryTemplate] gives ranges for its numbers, the sums that are worked, and the story in each
/// language. The templates stand in `stories.yaml`; [StoryTemplates] reads them, or a file of one's
/// own, and tells mistakes by their line. `StoryMaker.make(3, 15, 7)` makes fifteen problems of the
/// third grade; the last sum of each is the problem, and its [tamabako.problems.Story] holds the
/// sums before it.
@NullMarked
package tamabako.problems.story;

import org.jspecify.annotations.NullMarked;
