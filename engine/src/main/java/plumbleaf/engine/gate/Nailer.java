package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A board bolted along a rail to carry the pickets, or up the leaf across all its rails to carry boards that lie.
 *
 * @param rail id of the rail; of an upright one, of the stile it is bolted to, or of the lowest rail it crosses
 * @param middle of its length
 * @param length along the board, on its middle
 * @param longPoint overall along the board
 * @param endFromSquare cut of both ends from square, parallel, so that they stand plumb; of an upright one, so that they follow the leaf
 * @param bolts r of each bolt; of an upright one, z of each
 * @param upright whether it stands
 */
public record Nailer(
        String rail,
        Place middle,
        Length length,
        Length longPoint,
        Angle endFromSquare,
        List<Offset> bolts,
        Force wet,
        Force dry,
        boolean upright) {
    public Nailer {
        bolts = List.copyOf(bolts);
    }
}
