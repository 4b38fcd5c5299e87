package plumbleaf.engine.gate;

import java.util.Optional;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Length;

/**
 * The boards that finish a leaf as its fence is finished, so that the shut gate reads as part of it.
 *
 * @param cap lies flat on the frame and its boards, inside the height of the infill
 * @param fascia on edge under the cap, on the boards' face
 * @param kick on edge along the bottom, on the boards' face: unlike the fence's boards those of a leaf run on behind it, since they need the lowest nailer
 */
public record Trimming(Optional<Of> cap, Optional<Of> fascia, Optional<Of> kick) {
    public static final Trimming NONE = new Trimming(Optional.empty(), Optional.empty(), Optional.empty());

    /** A board with its wood. */
    public record Of(Board board, WoodSpecies wood) {}

    /** How much higher than the boards the cap is. */
    Length capThickness() {
        return cap.map(is -> is.board().thickness()).orElse(Length.ZERO);
    }

    /** How far the thicker of what is on their face stands out from it. */
    Length onFace() {
        Length over = fascia.map(is -> is.board().thickness()).orElse(Length.ZERO);
        Length foot = footOnFace();
        return over.compareTo(foot) > 0 ? over : foot;
    }

    /** The same at the foot of the leaf. */
    Length footOnFace() {
        return kick.map(is -> is.board().thickness()).orElse(Length.ZERO);
    }
}
