package tamabako.problems.qti;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tamabako.problems.Problem;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.marking.Written;
import tamabako.problems.text.ProblemText;

/// What matters of an item: the problem as JSON if it carries one, the answer it takes as right,
/// and the text that it shows.
///
/// @param json the problem as JSON; blank where the item was not made by Tamabako
/// @param right the right answer as the item has it; blank where it has none
/// @param shown the text of its body
record ItemParts(String json, String right, String shown) {

    /// Elements of running text; every other one begins a new line.
    private static final Set<String> RUNNING =
            Set.of("b", "em", "i", "span", "strong", "sub", "sup", "qti-text-entry-interaction");

    /// Reads on to the end of the item that `reader` stands at the start of.
    static ItemParts read(XMLStreamReader reader) throws XMLStreamException {
        StringBuilder json = new StringBuilder();
        StringBuilder right = new StringBuilder();
        StringBuilder shown = new StringBuilder();
        Deque<String> path = new ArrayDeque<>();
        path.push("item");
        while (!path.isEmpty()) {
            switch (reader.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    path.push(name(reader));
                    if (!RUNNING.contains(reader.getLocalName())) {
                        shown.append(' ');
                    }
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    path.pop();
                    shown.append(RUNNING.contains(reader.getLocalName()) ? "" : " ");
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
                    if (path.contains("qti-item-body")) {
                        shown.append(reader.getText());
                    } else if (path.contains("qti-value") && path.contains(QtiItem.PROBLEM)) {
                        json.append(reader.getText());
                    } else if (path.contains("qti-value")
                            && path.contains("qti-correct-response")) {
                        right.append(reader.getText());
                    }
                }
                default -> {}
            }
        }
        return new ItemParts(
                json.toString().strip(),
                right.toString().strip(),
                shown.toString().replaceAll("\\s+", " ").strip());
    }

    /// The element's name; for the variable that holds the problem, the name of the variable.
    private static String name(XMLStreamReader reader) {
        boolean isProblem = QtiItem.PROBLEM.equals(reader.getAttributeValue(null, "identifier"));
        return isProblem ? QtiItem.PROBLEM : reader.getLocalName();
    }

    /// The problem that the item asks.
    ///
    /// @param number its name where it has none
    /// @throws Unreadable if it asks for no sum, or takes another answer as right
    Problem problem(int number) {
        Problem problem = json.isEmpty() ? shownProblem() : ProblemJson.parse(json);
        if (!right.isEmpty() && !QtiAnswers.isRight(problem, right)) {
            throw new Unreadable(
                    new Reason.OtherAnswer(
                            Unreadable.shown(right), Written.of(problem).toString()));
        }
        return problem.id().isEmpty() && json.isEmpty()
                ? problem.withId(Integer.toString(number))
                : problem;
    }

    private Problem shownProblem() {
        try {
            return ProblemText.parse(shown);
        } catch (Unreadable _) {
            throw new Unreadable(new Reason.NoSumInItem(Unreadable.shown(shown)));
        }
    }
}
