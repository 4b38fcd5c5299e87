package plumbleaf.engine.takeoff;

import java.util.List;

/** Days of a job, in the order they are loaded for. */
public enum LoadStage {
    SET(
            "set day",
            List.of(
                    "auger and its bits",
                    "level, rod and string",
                    "mixing tub, hoe and water",
                    "post level and braces, two a post",
                    "the locate ticket and the stake-out sheet")),
    BUILD("build day", List.of("saw with a sharp blade", "driver with two batteries", "gap spacers", "chalk line")),
    HANG(
            "hang day",
            List.of(
                    "blocks and wedges",
                    "bar clamps",
                    "hinge wrench",
                    "zinc paint and brush",
                    "two people to lift the leaf")),
    FINISH(
            "finish day",
            List.of("moisture meter", "brushes and rags, wetted before they are thrown out", "drop cloths"));

    private final String key;

    @SuppressWarnings("ImmutableEnumChecker") // A copy that nobody can change.
    private final List<String> tools;

    LoadStage(String key, List<String> tools) {
        this.key = key;
        this.tools = List.copyOf(tools);
    }

    public String key() {
        return key;
    }

    /** What is not in the truck by habit. Common practice, no source. */
    public List<String> tools() {
        return tools;
    }
}
