package plumbleaf.engine.action;

/**
 * One combination's action at the foot of a post.
 *
 * @param state {@code closed}, {@code worst} or {@code open} for a gate post; {@code fence} for another
 * @param wind {@code wind-in}, {@code wind-out} or {@code none}
 */
public record CombinedAction(Combination combination, String state, String wind, BaseAction action) {
    /** {@code D+0.6W, open, wind-in}. */
    public String name() {
        return combination.hasWind()
                ? combination.key() + ", " + state + ", " + wind
                : combination.key() + ", " + state;
    }
}
