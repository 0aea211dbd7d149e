/// Papers as JSON, one object a line: `{"paper":"7KMX-2P9T-HC4R","ladder":"abacus-one-sheet",
/// "grade":"3","form":1,"sections":[{"section":"columns","problems":[...]}]}`. The problems stand
/// as [tamabako.problems.json] writes them.
@NullMarked
package tamabako.problems.setting.json;

import org.jspecify.annotations.NullMarked;
