package plumbleaf.engine.labour;

import java.util.Optional;

/** When in the job something is done; in this order. */
public enum Phase {
    TEAR_OUT("tear-out", "tear out the old fence"),
    SHOP("shop", "build the gate in the shop"),
    SET("set", "dig and set posts"),
    BUILD("build", "rails and pickets"),
    HANG("hang", "hang the gate"),
    FINISH("finish", "finish"),
    TRAVEL("travel", "travel and set-up");

    private final String key;
    private final String words;

    Phase(String key, String words) {
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

    public static Optional<Phase> of(String key) {
        for (Phase phase : values()) {
            if (phase.key.equals(key)) return Optional.of(phase);
        }
        return Optional.empty();
    }
}
