package plumbleaf.engine.catalogue;

import java.util.Optional;
import plumbleaf.engine.quantity.Length;

/**
 * Boards that finish a fence.
 *
 * @param cap lies flat along the top
 * @param fascia stands on edge under the cap, against the boards' face
 * @param kick stands on edge along the bottom, under the boards, where rot comes first and a new one is cheap
 * @param lattice between the boards and the cap
 */
public record FenceTrim(Optional<Board> cap, Optional<Board> fascia, Optional<Board> kick, Optional<Lattice> lattice) {
    public static final FenceTrim NONE =
            new FenceTrim(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** How many boards or bands of trim run along it. */
    public int boards() {
        return (cap.isPresent() ? 1 : 0)
                + (fascia.isPresent() ? 1 : 0)
                + (kick.isPresent() ? 1 : 0)
                + (lattice.isPresent() ? 1 : 0);
    }

    /**
     * Crossed strips in a frame, sold by the sheet.
     *
     * @param height of the band
     * @param sheet length of a sheet
     * @param solid share of its face that is wood
     */
    public record Lattice(Length height, Length sheet, double solid, String species) {
        public Lattice {
            if (!(solid > 0 && solid <= 1)) throw new IllegalArgumentException("Lattice is solid above 0, at most 1");
        }
    }
}
