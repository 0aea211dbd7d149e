/// Wishes as JSON objects, for files that teachers keep: `{"kind":"column","rows":10,
/// "digits":"3-6","minus":"2-3","customs":"papers"}`. The keys are told in docs/formats.md.
@NullMarked
package tamabako.problems.making.json;

import org.jspecify.annotations.NullMarked;
