package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A board bolted along a rail to carry the pickets.
 *
 * @param rail id of the rail
 * @param middle of its length
 * @param length along the board, on its middle
 * @param longPoint overall along the board
 * @param endFromSquare cut of both ends from square, parallel, so that they stand plumb
 * @param bolts r of each bolt
 */
public record Nailer(
        String rail,
        Place middle,
        Length length,
        Length longPoint,
        Angle endFromSquare,
        List<Offset> bolts,
        Force wet,
        Force dry) {
    public Nailer {
        bolts = List.copyOf(bolts);
    }
}
