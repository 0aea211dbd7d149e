package tamabako.problems.qti;

import java.io.StringWriter;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/// An XML document that is being written: an element a line, indented; text stands as it is.
final class XmlText {

    private static final XMLOutputFactory FACTORY = XMLOutputFactory.newDefaultFactory();

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;
    private int depth;
    private boolean hasChildren;
    private boolean isInline;

    /// Something that writes XML.
    private interface Writing {
        void write() throws XMLStreamException;
    }

    XmlText() {
        try {
            this.xml = FACTORY.createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("XML is written to memory.", impossible);
        }
    }

    /// Begins an element.
    XmlText open(String name) {
        return run(() -> {
            newLine();
            xml.writeStartElement(name);
            depth++;
            hasChildren = false;
        });
    }

    /// Puts an attribute on the element that was just begun.
    XmlText with(String attribute, String value) {
        return run(() -> xml.writeAttribute(attribute, printable(value)));
    }

    XmlText namespace(String namespace) {
        return run(() -> xml.writeDefaultNamespace(namespace));
    }

    XmlText language(Locale locale) {
        return run(() -> xml.writeAttribute("xml:lang", locale.getLanguage()));
    }

    /// Text inside the element. From here to its end no line is begun, so that no blank is added.
    XmlText text(String words) {
        return run(() -> {
            isInline = true;
            xml.writeCharacters(printable(words));
        });
    }

    /// A whole element with nothing but text in it.
    XmlText leaf(String name, String words) {
        return open(name).text(words).close();
    }

    /// Ends the element.
    XmlText close() {
        return run(() -> {
            depth--;
            if (hasChildren) {
                newLine();
            }
            isInline = false;
            xml.writeEndElement();
            hasChildren = true;
        });
    }

    private void newLine() throws XMLStreamException {
        if (!isInline) {
            xml.writeCharacters("\n" + "  ".repeat(depth));
        }
    }

    private XmlText run(Writing writing) {
        try {
            writing.write();
            return this;
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("XML is written to memory.", impossible);
        }
    }

    /// Without the characters that XML cannot hold.
    private static String printable(String words) {
        StringBuilder kept = new StringBuilder(words.length());
        words.codePoints().filter(XmlText::isXml).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static boolean isXml(int character) {
        return character == '\t'
                || character == '\n'
                || (character >= 0x20 && character < 0xD800)
                || (character >= 0xE000 && character < 0xFFFE)
                || character > 0xFFFF;
    }

    /// The document.
    @Override
    public String toString() {
        run(xml::flush);
        return text + "\n";
    }
}
