package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.Problem;

/// A problem under the number that is printed beside it.
record Numbered(String label, Problem problem) {

    private static final int LONGEST_LABEL = 4;

    /// `problems` under their own ids where all of these are short enough to print (1 to 4
    /// characters) and no two are the same, else numbered from 1.
    static List<Numbered> of(List<Problem> problems) {
        List<String> ids = problems.stream().map(Problem::id).distinct().toList();
        boolean own = ids.size() == problems.size() && ids.stream().allMatch(Numbered::printable);
        List<Numbered> numbered = new ArrayList<>();
        for (Problem problem : problems) {
            String place = String.valueOf(numbered.size() + 1);
            numbered.add(new Numbered(own ? problem.id() : place, problem));
        }
        return numbered;
    }

    private static boolean printable(String id) {
        return !id.isBlank() && id.codePointCount(0, id.length()) <= LONGEST_LABEL;
    }
}
