package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * One piece of a leaf's frame.
 *
 * @param id {@code G1a.m4}
 * @param from where its centreline begins, at the hinge or the bottom
 * @param to where it ends
 * @param cutLength on the centreline
 * @param longPoint overall along the piece: what the saw stop is set to
 * @param weight of the cut length on the nominal wall
 */
public record Member(
        String id,
        MemberRole role,
        Section section,
        Place from,
        Place to,
        Length cutLength,
        Length longPoint,
        MemberEnd firstEnd,
        MemberEnd lastEnd,
        EndsTurn ends,
        Force weight,
        List<Hole> holes) {
    public Member {
        holes = List.copyOf(holes);
    }

    Member drilled(List<Hole> centres) {
        return new Member(id, role, section, from, to, cutLength, longPoint, firstEnd, lastEnd, ends, weight, centres);
    }

    /** Middle of the centreline. */
    public Place middle() {
        return Place.at(
                (from.r().inches() + to.r().inches()) / 2,
                (from.n().inches() + to.n().inches()) / 2,
                (from.z().inches() + to.z().inches()) / 2);
    }
}
