package plumbleaf.engine.line;

import java.util.List;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * One rail of a bay.
 *
 * @param from elevation of its centreline at the first post
 * @param to elevation at the second
 * @param cut length on the centreline
 * @param longPoint overall length, what the saw stop is set to
 * @param endsFromSquare saw angle of each end from square, 0 a square cut; the two ends are parallel
 */
public record RailPiece(Offset from, Offset to, Length cut, Length longPoint, List<Angle> endsFromSquare) {
    public RailPiece {
        endsFromSquare = List.copyOf(endsFromSquare);
    }
}
