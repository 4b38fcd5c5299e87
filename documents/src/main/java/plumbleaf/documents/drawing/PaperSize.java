package plumbleaf.documents.drawing;

/** Sizes of paper, upright. */
public enum PaperSize {
    LETTER("letter", 8.5, 11),
    TABLOID("tabloid", 11, 17),
    A4("A4", 210 / 25.4, 297 / 25.4),
    A3("A3", 297 / 25.4, 420 / 25.4);

    private final String words;
    private final double shortIn;
    private final double longIn;

    PaperSize(String words, double shortIn, double longIn) {
        this.words = words;
        this.shortIn = shortIn;
        this.longIn = longIn;
    }

    public String words() {
        return words;
    }

    public double shortIn() {
        return shortIn;
    }

    public double longIn() {
        return longIn;
    }

    /** The sheet for drawings that goes with this paper for text: twice its size. */
    public PaperSize doubled() {
        return switch (this) {
            case LETTER, TABLOID -> TABLOID;
            case A4, A3 -> A3;
        };
    }
}
