package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;

/**
 * How a gate hangs, where a search looked for that too.
 *
 * @param hinge id of its hinges, of a slide that of its rollers; empty where they are as the job says
 * @param side the side they are on, seen from outside; empty at a pair and a slide
 * @param tail of a slide, where its tail was looked for
 */
public record Hanging(String hinge, Optional<Side> side, Optional<Length> tail) {
    /** Its parts in a fixed order. */
    String id() {
        String on = hinge + side.map(at -> at == Side.LEFT ? " left" : " right").orElse("");
        return tail.map(is -> (on.isEmpty() ? "" : on + " ") + "tail " + LengthText.inchesOnly(is.inches()))
                .orElse(on);
    }
}
