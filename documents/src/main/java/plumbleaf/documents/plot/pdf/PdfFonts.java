package plumbleaf.documents.plot.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import plumbleaf.documents.drawing.Typeface;

/** Our typefaces in one document, each embedded when first used and cut down to the letters that occur. */
final class PdfFonts {
    private static final String FOLDER = "/plumbleaf/documents/fonts/";

    private final PDDocument document;
    private final Map<Typeface, PDFont> loaded = new EnumMap<>(Typeface.class);

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    PDFont font(Typeface face) {
        return loaded.computeIfAbsent(face, this::load);
    }

    private PDFont load(Typeface face) {
        try (InputStream file = PdfFonts.class.getResourceAsStream(FOLDER + face.file())) {
            if (file == null)
                throw new IllegalStateException("The font " + face.file() + " is missing from the program");
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            // Ligatures and the like are not used in measuring, and looking for them takes most of the time of a
            // packet.
            font.setEnableGsub(false);
            return PDType0Font.load(document, font, true);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The font " + face.file() + " cannot be read", unreadable);
        }
    }
}
