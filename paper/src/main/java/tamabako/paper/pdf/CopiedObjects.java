package tamabako.paper.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;

/// Copies what PDFBox has made, such as the subset of a font, into a file.
final class CopiedObjects {

    private final ObjectFile file;
    private final IdentityHashMap<COSBase, Integer> copied = new IdentityHashMap<>();

    CopiedObjects(ObjectFile file) {
        this.file = file;
    }

    /// Copies `object` and all that it leads to.
    void copy(COSDictionary object, int number) throws IOException {
        copied.put(object, number);
        if (object instanceof COSStream stream) {
            copyStream(stream, number);
        } else {
            Bytes bytes = new Bytes();
            entries(bytes.add("<<"), object);
            file.write(number, bytes.add(">>"));
        }
    }

    private void copyStream(COSStream stream, int number) throws IOException {
        Bytes data = new Bytes();
        try (InputStream plain = stream.createInputStream()) {
            byte[] all = plain.readAllBytes();
            data.add(all, all.length);
        }
        COSDictionary rest = new COSDictionary(stream);
        rest.removeItem(COSName.FILTER);
        rest.removeItem(COSName.LENGTH);
        Bytes bytes = new Bytes();
        entries(bytes, rest);
        file.writeStream(number, latin(bytes), data);
    }

    private void entries(Bytes bytes, COSDictionary dictionary) throws IOException {
        for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
            value(bytes.add('/').add(entry.getKey().getName()).add(' '), entry.getValue());
        }
    }

    private void value(Bytes bytes, COSBase value) throws IOException {
        switch (value) {
            case COSObject indirect -> value(bytes, indirect.getObject());
            case COSDictionary dictionary -> bytes.reference(number(dictionary));
            case COSArray array -> {
                bytes.add('[');
                for (COSBase each : array) {
                    value(bytes, each);
                    bytes.add(' ');
                }
                bytes.add(']');
            }
            case COSName name -> bytes.add('/').add(name.getName());
            case COSString string -> {
                bytes.add('<');
                for (byte each : string.getBytes()) {
                    bytes.hex(each);
                }
                bytes.add('>');
            }
            case COSNumber number -> bytes.factor(number.floatValue());
            case COSBoolean truth -> bytes.add(String.valueOf(truth.getValue()));
            default -> throw new IllegalArgumentException("Cannot copy " + value);
        }
    }

    private int number(COSDictionary dictionary) throws IOException {
        Integer known = copied.get(dictionary);
        if (known != null) {
            return known;
        }
        int number = file.reserve();
        copy(dictionary, number);
        return number;
    }

    private static String latin(Bytes bytes) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < bytes.length(); i++) {
            text.append((char) (bytes.array()[i] & 0xFF));
        }
        return text.toString();
    }
}
