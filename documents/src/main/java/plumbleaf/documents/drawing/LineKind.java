package plumbleaf.documents.drawing;

import java.util.List;
import java.util.Locale;

/**
 * Kinds of line by width and dash, in inches on paper. Two widths in the ratio 2 to 1, and a heavy one for ground and borders.
 * Source: ISO 128-2 and ASME Y14.2, kinds and widths from memory.
 */
public enum LineKind {
    HEAVY(0.028),
    VISIBLE(0.020),
    THIN(0.010),
    HIDDEN(0.010),
    CENTRE(0.010),
    PHANTOM(0.010),
    DIMENSION(0.0085);

    private final double widthIn;

    LineKind(double widthIn) {
        this.widthIn = widthIn;
    }

    public double widthIn() {
        return widthIn;
    }

    /** Drawn and left out, in turn; empty for a line without breaks. */
    public List<Double> dashesIn() {
        return switch (this) {
            case HIDDEN -> List.of(0.10, 0.045);
            case CENTRE -> List.of(0.50, 0.05, 0.10, 0.05);
            case PHANTOM -> List.of(0.45, 0.05, 0.09, 0.05, 0.09, 0.05);
            case HEAVY, VISIBLE, THIN, DIMENSION -> List.of();
        };
    }

    /** The name in lower case: {@code visible}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
