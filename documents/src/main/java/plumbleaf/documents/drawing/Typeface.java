package plumbleaf.documents.drawing;

/** The three font files we letter with. */
public enum Typeface {
    INTER_REGULAR("Inter-Regular.ttf"),
    INTER_SEMIBOLD("Inter-SemiBold.ttf"),
    DEJAVU_SANS("DejaVuSans.ttf");

    private final String file;

    Typeface(String file) {
        this.file = file;
    }

    /** Name of its file among the resources of {@code plumbleaf.documents.fonts}. */
    public String file() {
        return file;
    }
}
