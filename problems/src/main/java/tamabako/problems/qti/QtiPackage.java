package tamabako.problems.qti;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SequencedMap;
import tamabako.problems.Problem;
import tamabako.problems.ProblemFile;
import tamabako.problems.ProblemFile.Fault;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// A QTI 3 package: a manifest, an item for each problem, and a test that asks all of them in their
/// order.
public final class QtiPackage {

    private static final String MANIFEST = "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1";

    private QtiPackage() {}

    /// The files of a package by their paths, the manifest first, as texts.
    ///
    /// @param title what test systems call the test
    public static SequencedMap<String, String> files(
            List<Problem> problems, String title, Locale locale) {
        SequencedMap<String, String> files = new LinkedHashMap<>();
        files.put("imsmanifest.xml", manifest(problems.size()));
        files.put("test.xml", test(problems.size(), title));
        for (int i = 1; i <= problems.size(); i++) {
            files.put(path(i), QtiItem.write(problems.get(i - 1), "item-" + i, locale));
        }
        return files;
    }

    /// The problems of all items in `files`, texts by their paths, in the order of the map. A file
    /// without an item, such as a manifest, is passed over.
    public static ProblemFile read(Map<String, String> files) {
        List<Problem> problems = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        files.forEach((path, text) -> {
            String name = files.size() == 1 ? "" : path;
            new ItemReader(name, problems, faults).read(text);
        });
        if (problems.isEmpty() && faults.isEmpty()) {
            faults.add(new Fault("", 0, new Unreadable(new Reason.NoItem())));
        }
        return new ProblemFile(problems, faults);
    }

    private static String manifest(int items) {
        XmlText xml = new XmlText();
        xml.open("manifest").namespace(MANIFEST).with("identifier", "manifest");
        xml.open("metadata")
                .leaf("schema", "QTI Package")
                .leaf("schemaversion", "3.0.0")
                .close()
                .open("organizations")
                .close()
                .open("resources");
        resource(xml, "test", "imsqti_test_xmlv3p0", "test.xml");
        for (int i = 1; i <= items; i++) {
            xml.open("dependency").with("identifierref", "item-" + i).close();
        }
        xml.close();
        for (int i = 1; i <= items; i++) {
            resource(xml, "item-" + i, "imsqti_item_xmlv3p0", path(i));
            xml.close();
        }
        return xml.close().close().toString();
    }

    private static void resource(XmlText xml, String identifier, String type, String path) {
        xml.open("resource")
                .with("identifier", identifier)
                .with("type", type)
                .with("href", path)
                .open("file")
                .with("href", path)
                .close();
    }

    private static String test(int items, String title) {
        XmlText xml = new XmlText();
        xml.open("qti-assessment-test")
                .namespace(QtiItem.NAMESPACE)
                .with("identifier", "test")
                .with("title", title);
        xml.open("qti-test-part")
                .with("identifier", "part")
                .with("navigation-mode", "nonlinear")
                .with("submission-mode", "simultaneous");
        xml.open("qti-assessment-section")
                .with("identifier", "section")
                .with("title", title)
                .with("visible", "true");
        for (int i = 1; i <= items; i++) {
            xml.open("qti-assessment-item-ref")
                    .with("identifier", "item-" + i)
                    .with("href", path(i))
                    .close();
        }
        return xml.close().close().close().toString();
    }

    private static String path(int item) {
        return "items/item-" + item + ".xml";
    }
}
