package plumbleaf.engine.job;

/** What was the matter, so that the same is not built twice. */
public enum ComplaintCause {
    SOIL("soil", "soil or footing"),
    HINGE("hinge", "hinge or latch"),
    WOOD("wood", "wood"),
    FINISH("finish", "finish"),
    WORK("work", "our work"),
    CUSTOMER("customer", "use or weather"),
    OTHER("other", "something else");

    private final String key;
    private final String words;

    ComplaintCause(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
