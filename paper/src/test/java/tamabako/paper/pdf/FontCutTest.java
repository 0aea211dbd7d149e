package tamabako.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.junit.jupiter.api.Test;
import tamabako.paper.words.PrintWords;

/// The cut fonts are nothing but the whole fonts with fewer characters. `-Dfonts.rewrite=true` cuts
/// them anew, and still fails the run.
class FontCutTest {

    private static final Path FONTS = Path.of("src", "main", "resources", "fonts");
    private static final int AFTER_KANA = 0x3100;

    /// Kanji of titles that teachers often write.
    private static final String OFTEN =
            "一二三四五六七八九十百千万億兆第回級段準初検定練習模擬試験問題答解番号氏名前年月日火水木金土曜"
                    + "時分秒点数合計計算暗見取読上伝票珠乗除加減開平立無円組生徒教室大会競技宿題週春夏秋冬朝"
                    + "位参弐種目別表枚用紙科口数順動方";

    @Test
    void theRegularCutIsTheWholeFontWithFewerCharacters() throws IOException {
        assertCut("BIZUDPGothic-Regular");
    }

    @Test
    void theBoldCutIsTheWholeFontWithFewerCharacters() throws IOException {
        assertCut("BIZUDPGothic-Bold");
    }

    private static void assertCut(String name) throws IOException {
        byte[] cut = cut(FONTS.resolve(name + ".ttf"));
        Path file = FONTS.resolve(name + "-cut.ttf");
        if (Boolean.getBoolean("fonts.rewrite")) {
            Files.write(file, cut);
            throw new AssertionError("Wrote " + file + ": run again without -Dfonts.rewrite.");
        }
        assertThat(Arrays.equals(Files.readAllBytes(file), cut))
                .as("%s is the whole font cut to our words; -Dfonts.rewrite=true cuts anew", file)
                .isTrue();
    }

    private static byte[] cut(Path whole) throws IOException {
        try (TrueTypeFont font =
                new TTFParser().parse(new RandomAccessReadBufferedFile(whole.toFile()))) {
            TTFSubsetter subsetter = new TTFSubsetter(font);
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            String kanji = OFTEN + PrintWords.of(Locale.JAPANESE).all();
            IntStream.concat(IntStream.range(' ', AFTER_KANA), kanji.codePoints())
                    .filter(character -> glyphs.getGlyphId(character) != 0)
                    .forEach(subsetter::add);
            ByteArrayOutputStream cut = new ByteArrayOutputStream();
            subsetter.writeToStream(cut);
            return cut.toByteArray();
        }
    }
}
