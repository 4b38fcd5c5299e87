package plumbleaf.documents.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Our table of letter widths says what the font files say. */
class AdvanceWidthsTest {
    /** Of Inter, either weight. */
    private static final int LETTERS = 245;

    /** Of DejaVu Sans, which only fills gaps. */
    private static final int OTHERS = 7;

    @ParameterizedTest
    @EnumSource(Typeface.class)
    void agreesWithTheFontFile(Typeface face) throws IOException {
        try (InputStream file = Typeface.class.getResourceAsStream("/plumbleaf/documents/fonts/" + face.file());
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            assertThat((double) font.getUnitsPerEm()).isEqualTo(AdvanceWidths.UNITS);
            int letters = 0;
            for (char letter = 0; letter < Character.MAX_VALUE; letter++) {
                if (!AdvanceWidths.has(face, letter)) continue;
                letters++;
                int glyph = font.getUnicodeCmapLookup().getGlyphId(letter);
                assertThat(glyph).as("letter %x", (int) letter).isPositive();
                assertThat(font.getAdvanceWidth(glyph))
                        .as("letter %x", (int) letter)
                        .isEqualTo(AdvanceWidths.of(face, letter));
            }
            // As many as the tables say, row by row.
            assertThat(letters).isEqualTo(face == Typeface.DEJAVU_SANS ? OTHERS : LETTERS);
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
