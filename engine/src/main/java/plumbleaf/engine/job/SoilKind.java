package plumbleaf.engine.job;

/** What the ground is. */
public enum SoilKind {
    SAND("sand"),
    GRAVEL("gravel"),
    CLAY("clay"),
    SILT("silt"),
    ROCK("rock"),
    /** Unprepared fill, peat or mud: no number is presumed. */
    FILL("fill");

    private final String key;

    SoilKind(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
