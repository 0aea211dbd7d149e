package tamabako.problems.qti;

import java.util.List;
import java.util.Locale;
import tamabako.problems.Problem;
import tamabako.problems.Story;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.text.ProblemText;

/// One problem as a QTI 3 item.
public final class QtiItem {

    /// The outcome variable whose default value is the problem as JSON.
    static final String PROBLEM = "TAMABAKO_PROBLEM";

    static final String NAMESPACE = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

    /// Gives the points of the answer that was typed, if it is among those listed.
    private static final String MARKING =
            "https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/map_response.xml";

    private QtiItem() {}

    /// The problem as an XML document that asks it in the language of `locale`.
    public static String write(Problem problem, Locale locale) {
        return write(problem, "item-1", locale);
    }

    static String write(Problem problem, String identifier, Locale locale) {
        XmlText xml = new XmlText();
        xml.open("qti-assessment-item")
                .namespace(NAMESPACE)
                .with("identifier", identifier)
                .with("title", title(problem, locale))
                .language(locale)
                .with("adaptive", "false")
                .with("time-dependent", "false");
        declare(xml, problem);
        xml.open("qti-item-body");
        QtiBody.write(xml, problem, locale);
        xml.close();
        xml.open("qti-response-processing").with("template", MARKING).close();
        return xml.close().toString();
    }

    /// The name of the problem and what it asks, as lists of items show them.
    private static String title(Problem problem, Locale locale) {
        String asked =
                problem.terms().told().orElse(null) instanceof Story story
                        ? story.in(locale).lines().findFirst().orElse("")
                        : ProblemText.write(problem);
        String named = problem.id().isEmpty() ? asked : problem.id() + ": " + asked;
        return named.length() <= 100 ? named : named.substring(0, 99) + "…";
    }

    private static void declare(XmlText xml, Problem problem) {
        String points = Integer.toString(problem.terms().points().orElse(1));
        List<String> forms = QtiAnswers.of(problem);
        variable(xml, "qti-response-declaration", "RESPONSE", "string");
        xml.open("qti-correct-response").leaf("qti-value", forms.getFirst()).close();
        xml.open("qti-mapping").with("default-value", "0");
        for (String form : forms) {
            xml.open("qti-map-entry").with("map-key", form).with("mapped-value", points).close();
        }
        xml.close().close();
        variable(xml, "qti-outcome-declaration", "SCORE", "float");
        xml.with("normal-maximum", points);
        xml.open("qti-default-value").leaf("qti-value", "0").close().close();
        variable(xml, "qti-outcome-declaration", PROBLEM, "string");
        xml.open("qti-default-value").leaf("qti-value", ProblemJson.line(problem)).close().close();
    }

    private static void variable(XmlText xml, String sort, String name, String type) {
        xml.open(sort)
                .with("identifier", name)
                .with("cardinality", "single")
                .with("base-type", type);
    }
}
