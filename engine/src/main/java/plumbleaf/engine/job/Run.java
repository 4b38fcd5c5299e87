package plumbleaf.engine.job;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.support.Support;

/**
 * A fence run: legs of post centres from a start, one style.
 *
 * @param id as the user knows it: {@code R1}
 * @param outside which side is outside, walking from the start
 * @param start post centre (or wall face) where it begins
 * @param first how its first end is held
 * @param last how its last end is held
 * @param style id of a style in the catalogue, or {@code none} for a lone gate
 * @param infill height of the infill, bottom edge to top edge
 * @param bottomGap wanted gap between infill and ground
 * @param maxBay greatest spacing of posts, centre to centre
 * @param posts what holds its line posts
 * @param fits parts that follow the ground in another way than {@code fit}
 * @param otherPosts parts whose posts are held in another way
 * @param basis where this run differs from the site
 * @param set posts that a stake-out sheet has fixed
 * @param stain of its wood and that of its gates
 * @param step what the steps of a stepped fence are whole multiples of, where the style does not say it
 * @param checks tapes across its corners
 * @param sides parts on a basis or on posts of their own, in order
 * @param lowRails whether more rails go under the lowest one where boards hang further down, as under a level top
 * @param crossSlope how the ground beside it tilts where nothing was shot there: rise over run towards the inside, + up; level where nobody said
 */
public record Run(
        String id,
        Side outside,
        Start start,
        List<Leg> legs,
        RunEnd first,
        RunEnd last,
        String style,
        Length infill,
        Length bottomGap,
        Fit fit,
        Length maxBay,
        FinishedFace finishedFace,
        List<NoDig> noDig,
        List<SetPost> set,
        Support posts,
        List<PostStretch> otherPosts,
        Stated<DesignBasis> basis,
        Stain stain,
        List<FitPart> fits,
        Stated<Length> step,
        List<CheckTape> checks,
        List<RunSide> sides,
        boolean lowRails,
        Stated<Slope> crossSlope) {
    public Run {
        legs = List.copyOf(legs);
        noDig = List.copyOf(noDig);
        set = List.copyOf(set);
        fits = List.copyOf(fits);
        checks = List.copyOf(checks);
        otherPosts = List.copyOf(otherPosts);
        sides = List.copyOf(sides);
    }

    /** What holds a post of the line at a station: the first part that has it, else the run's own way. */
    public Support postsAt(double stationIn) {
        for (PostStretch part : otherPosts) if (part.holds(stationIn)) return part.posts();
        return posts;
    }

    /** Whether it ends where it begins: round a yard. */
    public boolean isRing() {
        return last.match(free -> false, wall -> false, joins -> joins.run().equals(id), theirs -> false);
    }

    /** How the fence follows the ground at a station: the first part that holds it, else the run's own way. */
    public Fit fitAt(double stationIn) {
        for (FitPart part : fits) if (part.holds(stationIn)) return part.fit();
        return fit;
    }

    /** The greatest spacing of posts that a bay beginning at a station keeps: the run's own, or less on a side that asks for less. */
    public Length maxBayAt(double stationIn) {
        Length most = maxBay;
        for (RunSide side : sides) {
            boolean here =
                    side.from().inches() <= stationIn && stationIn < side.to().inches();
            Length own = side.maxBay().or(most);
            if (here && own.compareTo(most) < 0) most = own;
        }
        return most;
    }

    /** The same run, following the ground in other ways. */
    public Run fitted(Fit whole, List<FitPart> parts) {
        return with(whole, parts, maxBay, set, sides, lowRails, posts, otherPosts);
    }

    /** The same run, its posts held in other ways. */
    public Run held(Support whole, List<PostStretch> parts) {
        return with(fit, fits, maxBay, set, sides, lowRails, whole, parts);
    }

    public Run withSides(List<RunSide> changed) {
        return with(fit, fits, maxBay, set, changed, lowRails, posts, otherPosts);
    }

    public Run withLowRails(boolean more) {
        return with(fit, fits, maxBay, set, sides, more, posts, otherPosts);
    }

    public Run withMaxBay(Length most) {
        return with(fit, fits, most, set, sides, lowRails, posts, otherPosts);
    }

    private Run with(
            Fit whole,
            List<FitPart> parts,
            Length most,
            List<SetPost> placed,
            List<RunSide> built,
            boolean more,
            Support held,
            List<PostStretch> heldOtherwise) {
        return new Run(
                id,
                outside,
                start,
                legs,
                first,
                last,
                style,
                infill,
                bottomGap,
                whole,
                most,
                finishedFace,
                noDig,
                placed,
                held,
                heldOtherwise,
                basis,
                stain,
                parts,
                step,
                checks,
                built,
                more,
                crossSlope);
    }

    /** The same run with a post put where somebody wants it; one that was put somewhere before moves. */
    public Run withSet(SetPost post) {
        List<SetPost> changed = new ArrayList<>();
        boolean known = false;
        for (SetPost each : set) {
            boolean same = each.id().equals(post.id());
            known = known || same;
            changed.add(same ? post : each);
        }
        if (!known) changed.add(post);
        return with(fit, fits, maxBay, changed, sides, lowRails, posts, otherPosts);
    }

    /** Whether this is only a line for a gate to stand on. */
    public boolean isLoneGate() {
        return style.equals("none");
    }
}
