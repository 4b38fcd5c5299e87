package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.job.Side;

/**
 * How a gate hangs, where a search looked for that too.
 *
 * @param hinge id of its hinges
 * @param side the side they are on, seen from outside; empty at a pair
 */
public record Hanging(String hinge, Optional<Side> side) {
    /** Its parts in a fixed order. */
    String id() {
        return hinge + side.map(at -> at == Side.LEFT ? " left" : " right").orElse("");
    }
}
