/// Problems as plain text, one a line.
///
/// `54 - 29 + 38`, `306 x 4`, `1225 / 35`, `√729`, `∛59319`, `root 2 of 729`, each with `to 3
/// places` behind it where decimals are asked for. A line holds the numbers and the places only;
/// unit, points and the rest are told in JSON. What cannot be read throws an
/// [tamabako.problems.Unreadable] that names the character.
@NullMarked
package tamabako.problems.text;

import org.jspecify.annotations.NullMarked;
