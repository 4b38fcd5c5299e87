package plumbleaf.documents.mark;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Primitive;

/** An address as a QR code in a square of side 1, its quiet zone of four modules counted. Source: ISO/IEC 18004, by the library. */
public final class LinkCode {
    private static final int QUIET = 4;

    private LinkCode() {}

    /** Empty for an empty address, and for one longer than any code holds. */
    public static List<Primitive> of(String address) {
        if (address.isEmpty()) return List.of();
        try {
            return squares(Encoder.encode(address, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException tooLong) {
            return List.of();
        }
    }

    /** Dark modules that touch along a row become one bar. */
    private static List<Primitive> squares(ByteMatrix matrix) {
        int across = matrix.getWidth() + 2 * QUIET;
        double module = 1.0 / across;
        List<Primitive> bars = new ArrayList<>();
        for (int row = 0; row < matrix.getHeight(); row++) {
            double top = 1 - (row + QUIET) * module;
            int from = -1;
            for (int column = 0; column <= matrix.getWidth(); column++) {
                boolean dark = column < matrix.getWidth() && matrix.get(column, row) == 1;
                if (dark && from < 0) from = column;
                if (!dark && from >= 0) {
                    Box bar = new Box((from + QUIET) * module, top - module, (column + QUIET) * module, top);
                    bars.add(Fill.of(bar.corners(), Layer.SHEET, Ink.INK));
                    from = -1;
                }
            }
        }
        return List.copyOf(bars);
    }
}
