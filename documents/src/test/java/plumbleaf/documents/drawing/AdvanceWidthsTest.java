package plumbleaf.documents.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Our table of letter widths says what the font files say. */
class AdvanceWidthsTest {
    @ParameterizedTest
    @EnumSource(Typeface.class)
    void agreesWithTheFontFile(Typeface face) throws IOException {
        try (InputStream file = Typeface.class.getResourceAsStream("/plumbleaf/documents/fonts/" + face.file());
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            assertThat((double) font.getUnitsPerEm()).isEqualTo(AdvanceWidths.UNITS);
            Map<Integer, Integer> table = AdvanceWidths.of(face);
            assertThat(table).isNotEmpty();
            for (Map.Entry<Integer, Integer> letter : table.entrySet()) {
                int glyph = font.getUnicodeCmapLookup().getGlyphId(letter.getKey());
                assertThat(glyph).as("letter %x", letter.getKey()).isPositive();
                assertThat(font.getAdvanceWidth(glyph))
                        .as("letter %x", letter.getKey())
                        .isEqualTo(letter.getValue());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Typeface.class,
            names = {"INTER_REGULAR", "INTER_SEMIBOLD"})
    void capitalsAreAsHighAsTheFontSays(Typeface face) throws IOException {
        try (InputStream file = Typeface.class.getResourceAsStream("/plumbleaf/documents/fonts/" + face.file());
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            int glyph = font.getUnicodeCmapLookup().getGlyphId('H');
            double high = font.getGlyph().getGlyph(glyph).getYMaximum();
            assertThat(high / font.getUnitsPerEm()).isEqualTo(Lettering.CAPITAL);
        }
    }
}
