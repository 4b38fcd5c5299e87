package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Angle;

/**
 * How a member's end is cut.
 *
 * @param cuts one for a plain or a coped end, two for the point of a brace in a corner (first against the stile)
 * @param coped whether the end is sawn square and coped to a round tube; its cut then tells how far from square it meets that tube
 */
public record MemberEnd(List<Cut> cuts, boolean coped) {
    public MemberEnd {
        cuts = List.copyOf(cuts);
    }

    /** The saw setting from square: that of the first cut, 0 for a coped end. */
    public Angle fromSquare() {
        return coped || cuts.isEmpty() ? Angle.ZERO : cuts.get(0).fromSquare();
    }

    static MemberEnd one(Cut cut) {
        return new MemberEnd(List.of(cut), false);
    }
}
