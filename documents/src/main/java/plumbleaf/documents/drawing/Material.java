package plumbleaf.documents.drawing;

/** What is cut through or covered: shown by hatch first, by tint second. */
public enum Material {
    SOIL(Ink.TINT_SOIL),
    CONCRETE(Ink.TINT_CONCRETE),
    GRAVEL(Ink.TINT_CONCRETE),
    END_GRAIN(Ink.TINT_WOOD),
    WOOD(Ink.TINT_WOOD),
    STEEL(Ink.INK),
    STEEL_FACE(Ink.TINT_STEEL),
    GATE_FACE(Ink.TINT_GATE),
    SHADE(Ink.TINT_BAND),
    CLEAR(Ink.PAPER);

    private final Ink tint;

    Material(Ink tint) {
        this.tint = tint;
    }

    public Ink tint() {
        return tint;
    }
}
