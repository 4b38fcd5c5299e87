package plumbleaf.documents.mark;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import plumbleaf.documents.drawing.Emblem;

/**
 * Reads a mark that somebody brings: PNG, JPEG or SVG by its first bytes, whatever it is called. Whatever it was, it comes out as a new
 * PNG on white, so that nothing hidden in the file goes on.
 */
public final class MarkFile {
    private static final int MOST_BYTES = 2_000_000;
    private static final int MOST_PIXELS = 25_000_000;
    /** Enough for 600 dots an inch in a title block. */
    private static final int KEPT_PIXELS = 1200;

    private MarkFile() {}

    /** A mark, or in one sentence why it is none. */
    public record Answer(Optional<Emblem> emblem, String problem) {
        static Answer refused(String problem) {
            return new Answer(Optional.empty(), problem);
        }
    }

    public static Answer read(byte[] bytes) {
        if (bytes.length == 0) return Answer.refused("the file is empty");
        if (bytes.length > MOST_BYTES) return Answer.refused("the file is larger than 2 MB; save it smaller");
        try {
            if (starts(bytes, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) return raster(bytes, "png");
            if (starts(bytes, 0xFF, 0xD8, 0xFF)) return raster(bytes, "jpeg");
        } catch (IOException broken) {
            return Answer.refused("the picture is damaged; save it again");
        }
        if (SvgMark.isOne(bytes)) return SvgMark.read(bytes, KEPT_PIXELS).match(MarkFile::kept, Answer::refused);
        return Answer.refused("it is neither PNG, JPEG nor SVG; save it as one of them");
    }

    private static boolean starts(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) return false;
        for (int i = 0; i < wanted.length; i++) if ((bytes[i] & 0xFF) != wanted[i]) return false;
        return true;
    }

    /** Its size is read from its head before a pixel is: a small file may claim a picture that fills all memory. */
    private static Answer raster(byte[] bytes, String format) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format);
        ImageReader reader = readers.next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
            if (pixels > MOST_PIXELS)
                return Answer.refused("the picture has more than 25 million pixels; save it smaller");
            return kept(reader.read(0));
        } catch (RuntimeException damaged) {
            // The readers of the platform answer a damaged file with whatever went wrong inside them.
            return Answer.refused("the picture is damaged; save it again");
        } finally {
            reader.dispose();
        }
    }

    /** On white, no larger than needed. */
    private static Answer kept(BufferedImage image) {
        double factor = Math.min(1, (double) KEPT_PIXELS / Math.max(image.getWidth(), image.getHeight()));
        int wide = (int) Math.max(1, Math.round(image.getWidth() * factor));
        int high = (int) Math.max(1, Math.round(image.getHeight() * factor));
        BufferedImage white = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = white.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, wide, high);
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        pen.drawImage(image, 0, 0, wide, high, null);
        pen.dispose();
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(white, "png", out);
            return new Answer(Optional.of(new Emblem(out.toByteArray(), wide, high)), "");
        } catch (IOException failed) {
            return Answer.refused("the picture could not be kept: " + failed.getMessage());
        }
    }

    /** The same mark from the PNG that was kept of it. */
    public static Optional<Emblem> kept(byte[] png) {
        return png.length == 0 ? Optional.empty() : read(png).emblem();
    }
}
