package plumbleaf.engine.catalogue;

import java.util.Optional;
import plumbleaf.engine.quantity.Length;

/**
 * Boards that finish a fence, inside its height: the boards of the infill begin over the kick board and end under lattice and cap.
 *
 * @param cap lies flat along the top
 * @param fascia stands on edge under the cap, against the boards' face
 * @param kick stands on edge along the bottom, under the boards, where rot comes first and a new one is cheap
 * @param lattice between the boards and the cap
 */
public record FenceTrim(Optional<Board> cap, Optional<Board> fascia, Optional<Board> kick, Optional<Lattice> lattice) {
    public static final FenceTrim NONE =
            new FenceTrim(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** What lattice and cap take of the top of the infill. */
    public Length above() {
        return Length.inches(lattice.map(band -> band.height().inches()).orElse(0.0)
                + cap.map(board -> board.thickness().inches()).orElse(0.0));
    }

    /** What a kick board takes of its bottom. */
    public Length below() {
        return kick.map(Board::width).orElse(Length.ZERO);
    }

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
