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

    /**
     * Along its shorter side from point to point, to check the cut piece by: the long point less {@code d tan a} of both ends where they lean against each other, of the steeper one where
     * they lean the same way. An end that is coped, or pointed in a corner, takes nothing off. Holds for cuts below 90 degrees. Source: plane geometry. Check: MiterCheck.
     */
    public Length shortPoint() {
        double first = shorterIn(firstEnd);
        double last = shorterIn(lastEnd);
        double taken = ends == EndsTurn.OPPOSED ? first + last : Math.max(first, last);
        return Length.inches(Math.max(0, longPoint.inches() - taken));
    }

    /** Whether it has a shorter side to check it by: both ends sawn in one cut. */
    public boolean hasShortPoint() {
        return isSawnOnce(firstEnd) && isSawnOnce(lastEnd);
    }

    private static boolean isSawnOnce(MemberEnd end) {
        return !end.coped() && end.cuts().size() == 1;
    }

    private double shorterIn(MemberEnd end) {
        if (!isSawnOnce(end)) return 0;
        return 2 * MiterCuts.beyondCentreline(section.depth(), end.fromSquare()).inches();
    }

    /** Middle of the centreline. */
    public Place middle() {
        return Place.at(
                (from.r().inches() + to.r().inches()) / 2,
                (from.n().inches() + to.n().inches()) / 2,
                (from.z().inches() + to.z().inches()) / 2);
    }
}
