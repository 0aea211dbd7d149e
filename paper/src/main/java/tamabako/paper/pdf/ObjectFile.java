package tamabako.paper.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;

/// The objects of a PDF 1.7 file (ISO 32000-1, 7.5): streams one by one, all others packed in
/// object streams as they come, and at the end the table of where each is.
///
/// PDFBox keeps every object of a file in memory until it is saved and packs them then; a thousand
/// papers are more than half a million, nearly all of them structure elements.
final class ObjectFile implements AutoCloseable {

    private static final int PACK = 500;
    private static final int FREE = 0;
    private static final int PLAIN = 1;
    private static final int PACKED = 2;

    /// The bytes of a row of the table, and the predictor that stands before each.
    private static final int ROW = 7;

    private static final int UP = 2;

    private final Deflater deflater = new Deflater();
    private final byte[] deflated = new byte[1 << 14];
    private final Bytes file = new Bytes();
    private final List<long[]> places = new ArrayList<>();
    private final Bytes packHeads = new Bytes();
    private final Bytes pack = new Bytes();
    private int packed;
    private int packNumber;

    ObjectFile() {
        file.add("%PDF-1.7\n%").add(0xE2).add(0xE3).add(0xCF).add(0xD3).add('\n');
        places.add(new long[] {FREE, 0, 0xFFFF});
    }

    /// A number for an object that is written later.
    int reserve() {
        places.add(new long[] {FREE, 0, 0});
        return places.size() - 1;
    }

    /// Writes an object that is no stream.
    void write(int number, Bytes object) {
        if (packed == 0) {
            packNumber = reserve();
        }
        places.set(number, new long[] {PACKED, packNumber, packed});
        packHeads.whole(number).add(' ').whole(pack.length()).add(' ');
        pack.add(object.array(), object.length()).add('\n');
        packed++;
        if (packed == PACK) {
            flush();
        }
    }

    /// Writes a stream.
    ///
    /// @param entries of its dictionary besides the length and the filter
    void writeStream(int number, String entries, Bytes data) {
        Bytes small = deflate(data);
        places.set(number, new long[] {PLAIN, file.length(), 0});
        file.whole(number).add(" 0 obj\n<<").add(entries).add("/Filter/FlateDecode/Length ");
        file.whole(small.length()).add(">>stream\n").add(small.array(), small.length());
        file.add("\nendstream\nendobj\n");
    }

    /// The file.
    ///
    /// @param trailer the entries of the trailer
    byte[] finish(String trailer) {
        if (packed > 0) {
            flush();
        }
        int number = reserve();
        int start = file.length();
        places.set(number, new long[] {PLAIN, start, 0});
        writeStream(
                number,
                "/Type/XRef/W[1 4 2]/Size %d/DecodeParms<</Predictor 12/Columns %d>>%s"
                        .formatted(places.size(), ROW, trailer),
                table());
        file.add("startxref\n").whole(start).add("\n%%EOF\n");
        return file.copy();
    }

    /// A row for each object, each byte less the one above it, which packs much better.
    private Bytes table() {
        Bytes table = new Bytes();
        long[] above = {0, 0, 0};
        for (long[] place : places) {
            table.add(UP).add((int) (place[0] - above[0]));
            for (int shift = 24; shift >= 0; shift -= 8) {
                table.add((int) ((place[1] >> shift) - (above[1] >> shift)));
            }
            table.add((int) ((place[2] >> 8) - (above[2] >> 8)));
            table.add((int) (place[2] - above[2]));
            above = place;
        }
        return table;
    }

    private void flush() {
        Bytes whole = new Bytes();
        whole.add(packHeads.array(), packHeads.length()).add(pack.array(), pack.length());
        String entries = "/Type/ObjStm/N %d/First %d".formatted(packed, packHeads.length());
        packed = 0;
        packHeads.clear();
        pack.clear();
        writeStream(packNumber, entries, whole);
    }

    private Bytes deflate(Bytes data) {
        Bytes small = new Bytes();
        deflater.reset();
        deflater.setInput(data.array(), 0, data.length());
        deflater.finish();
        while (!deflater.finished()) {
            small.add(deflated, deflater.deflate(deflated));
        }
        return small;
    }

    @Override
    public void close() {
        deflater.end();
    }
}
