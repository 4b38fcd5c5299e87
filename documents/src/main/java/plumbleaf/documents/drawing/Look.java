package plumbleaf.documents.drawing;

/**
 * How a mark is drawn and what it stands for.
 *
 * @param of the id of the thing drawn ({@code P7}, {@code B3}, {@code G1a.m4}), so that a screen can link and light it; empty when none
 */
public record Look(Layer layer, LineKind line, Ink ink, String of) {
    public static Look visible(Layer layer) {
        return new Look(layer, LineKind.VISIBLE, Ink.INK, "");
    }

    public static Look thin(Layer layer) {
        return new Look(layer, LineKind.THIN, Ink.INK, "");
    }

    public static Look hidden(Layer layer) {
        return new Look(layer, LineKind.HIDDEN, Ink.INK, "");
    }

    public static Look centre(Layer layer) {
        return new Look(layer, LineKind.CENTRE, Ink.INK, "");
    }

    public static Look dimension() {
        return new Look(Layer.DIMENSIONS, LineKind.DIMENSION, Ink.INK, "");
    }

    public static Look note() {
        return new Look(Layer.NOTES, LineKind.THIN, Ink.INK, "");
    }

    public Look of(String id) {
        return new Look(layer, line, ink, id);
    }

    public Look in(Ink other) {
        return new Look(layer, line, other, of);
    }

    public Look on(Layer other) {
        return new Look(other, line, ink, of);
    }

    public Look as(LineKind other) {
        return new Look(layer, other, ink, of);
    }
}
