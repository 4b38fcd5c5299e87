package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Angle;

/**
 * How a member's end is cut.
 *
 * @param cuts one for a plain end, two for the point of a brace in a corner (first against the stile), none for the cope of a round tube
 * @param coped whether the end is coped to a round tube
 */
public record MemberEnd(List<Cut> cuts, boolean coped) {
    public MemberEnd {
        cuts = List.copyOf(cuts);
    }

    /** The saw setting from square: that of the first cut, 0 for a coped end. */
    public Angle fromSquare() {
        return cuts.isEmpty() ? Angle.ZERO : cuts.get(0).fromSquare();
    }

    static MemberEnd one(Cut cut) {
        return new MemberEnd(List.of(cut), false);
    }
}
