package tamabako.problems.qti;

import java.io.StringReader;
import java.util.List;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tamabako.problems.Problem;
import tamabako.problems.ProblemFile.Fault;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// Reads the items of one XML text. Nothing outside of the text is ever looked up, and a document
/// type is refused.
final class ItemReader {

    private static final XMLInputFactory FACTORY = XMLInputFactory.newDefaultFactory();

    static {
        FACTORY.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        FACTORY.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        FACTORY.setProperty(XMLInputFactory.IS_COALESCING, true);
    }

    private final String file;
    private final List<Problem> problems;
    private final List<Fault> faults;

    /// @param file the name of the text in its faults
    /// @param problems where the problems are added
    /// @param faults where the faults are added
    ItemReader(String file, List<Problem> problems, List<Fault> faults) {
        this.file = file;
        this.problems = problems;
        this.faults = faults;
    }

    /// Reads every item of the text; what is wrong with one leaves the others.
    void read(String xml) {
        try {
            XMLStreamReader reader = FACTORY.createXMLStreamReader(new StringReader(bare(xml)));
            while (reader.hasNext()) {
                int event = reader.next();
                if (event == XMLStreamConstants.DTD) {
                    blame(reader.getLocation().getLineNumber(), new Reason.DocumentType());
                    return;
                }
                if (event == XMLStreamConstants.START_ELEMENT
                        && reader.getLocalName().equals("qti-assessment-item")) {
                    item(reader);
                }
            }
        } catch (XMLStreamException broken) {
            int column = Math.max(1, broken.getLocation().getColumnNumber());
            blame(broken.getLocation().getLineNumber(), new Reason.NotXml(column));
        }
    }

    private void item(XMLStreamReader reader) throws XMLStreamException {
        int line = reader.getLocation().getLineNumber();
        ItemParts parts = ItemParts.read(reader);
        try {
            problems.add(parts.problem(problems.size() + faults.size() + 1));
        } catch (Unreadable fault) {
            faults.add(new Fault(file, line, fault));
        }
    }

    private void blame(int line, Reason reason) {
        faults.add(new Fault(file, Math.max(0, line), new Unreadable(reason)));
    }

    private static String bare(String xml) {
        return xml.startsWith("\uFEFF") ? xml.substring(1) : xml;
    }
}
