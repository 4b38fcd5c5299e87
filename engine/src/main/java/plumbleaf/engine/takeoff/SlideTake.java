package plumbleaf.engine.takeoff;

import java.util.List;
import plumbleaf.engine.catalogue.RollerModel;

/**
 * What a slide gate takes besides its leaf and posts: rollers with their brackets and bolts on two posts, a receiver, a stop at both ends of its way.
 *
 * @param gate its id
 */
public record SlideTake(String gate, RollerModel rollers) {
    /** One on each roller post. */
    public static final int SETS = 2;

    /** At the end of its way, open and closed. */
    public static final int STOPS = 2;

    public Needs needs() {
        return new Needs(
                List.of(
                        Need.pieces(rollers.id(), rollers.name(), PartGroup.HARDWARE, SETS, gate),
                        Need.pieces(
                                "slide-receiver", "receiver for the nose of a slide gate", PartGroup.HARDWARE, 1, gate),
                        Need.pieces(
                                "slide-stop", "rubber-faced stop of a slide gate", PartGroup.HARDWARE, STOPS, gate)),
                List.of());
    }
}
