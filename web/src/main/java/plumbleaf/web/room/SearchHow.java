package plumbleaf.web.room;

import java.util.Optional;
import plumbleaf.engine.design.HangingAsked;

/** How much of a gate's build a search leaves open. */
enum SearchHow {
    OPEN("open", "What the job leaves open", true, new HangingAsked(false, false, false)),
    BUILD("build", "Every build, whatever is pinned", false, new HangingAsked(false, false, false)),
    HINGES("hinges", "Every build on every hinge", false, new HangingAsked(true, false, false)),
    SIDES("sides", "Every build on every hinge, on either side", false, new HangingAsked(true, true, false)),
    TAILS(
            "tails",
            "Every build on every set of rollers, with longer and shorter tails",
            false,
            new HangingAsked(true, false, true));

    private final String key;
    private final String words;
    private final boolean keepsPinned;

    @SuppressWarnings("ImmutableEnumChecker") // A record of three flags.
    private final HangingAsked hanging;

    SearchHow(String key, String words, boolean keepsPinned, HangingAsked hanging) {
        this.key = key;
        this.words = words;
        this.keepsPinned = keepsPinned;
        this.hanging = hanging;
    }

    static Optional<SearchHow> of(String key) {
        for (SearchHow how : values()) if (how.key.equals(key)) return Optional.of(how);
        return Optional.empty();
    }

    String key() {
        return key;
    }

    String words() {
        return words;
    }

    /** Whether what the job pins of the gate's build stays as it is. */
    boolean keepsPinned() {
        return keepsPinned;
    }

    HangingAsked hanging() {
        return hanging;
    }
}
