package plumbleaf.documents.plot.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import plumbleaf.documents.drawing.Emblem;
import plumbleaf.documents.drawing.Typeface;

/** Our typefaces and the contractor's mark in one document, each embedded once when first used, typefaces cut down to the letters that occur. */
final class PdfFonts {
    private static final String FOLDER = "/plumbleaf/documents/fonts/";

    private final PDDocument document;
    private final Map<Typeface, PDFont> loaded = new EnumMap<>(Typeface.class);

    private final Map<Emblem, PDImageXObject> pictures = new LinkedHashMap<>();

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    PDFont font(Typeface face) {
        return loaded.computeIfAbsent(face, this::load);
    }

    PDImageXObject picture(Emblem emblem) throws IOException {
        PDImageXObject known = pictures.get(emblem);
        if (known != null) return known;
        PDImageXObject made =
                LosslessFactory.createFromImage(document, ImageIO.read(new ByteArrayInputStream(emblem.png())));
        pictures.put(emblem, made);
        return made;
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
