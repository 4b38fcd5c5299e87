package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;

/**
 * What a leaf does besides dropping.
 *
 * @param framePlay the part of the leaf's own drop that is the play of its corner brackets
 * @param rods its tension rods, in their order
 * @param withoutRods the total drop with every rod taken out; the total itself where there is none
 * @param twistGust how far the free upper latch corner leaves the plane in the service gust, the leaf closed, without sign
 * @param twistWind the same in 0.6 of the design wind
 * @param hertz lowest natural frequency of the closed leaf on its hinges and post
 * @param modeLbPerIn what holds the shape it then shakes in, its largest shift taken as one inch
 * @param modePounds weight that goes along
 */
public record LeafSway(
        Offset framePlay,
        List<Pull> rods,
        Offset withoutRods,
        Offset twistGust,
        Offset twistWind,
        double hertz,
        double modeLbPerIn,
        double modePounds) {
    public LeafSway {
        rods = List.copyOf(rods);
    }

    /** Where nobody asks how the leaf sways. */
    static LeafSway notAsked(Offset framePlay) {
        return new LeafSway(framePlay, List.of(), Offset.ZERO, Offset.ZERO, Offset.ZERO, 0, 0, 0);
    }

    /**
     * One rod under the leaf's own weight.
     *
     * @param pull with its pretension; nothing where it is slack
     */
    public record Pull(String member, Force pull, boolean slack) {}
}
