package plumbleaf.engine.design;

import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HingeForce;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.HingePlate;

/**
 * The hinge post's wall where its top hinge pulls, near the open top of the post. Nothing bends the post above its top hinge, so its wall is not pressed there.
 * A pull sideways counts like one off the wall, on the safe side (judgement).
 *
 * @param still greatest pull without wind
 * @param windy greatest pull of all
 */
record PostWall(HingePlate plate, Section post, Force still, Force windy) {
    /** The plate of a hinge along the post, until the maker's sheet is entered. Judgement. */
    private static final Length PLATE_HEIGHT = Length.inches(3);

    /** The same plate's thickness. Judgement. */
    private static final Length PLATE_THICKNESS = Length.inches(0.25);

    private static final double NOT_PRESSED = 1;

    static PostWall of(HungLeaf hung) {
        double still = 0;
        double windy = 0;
        for (CaseForces each : hung.cases()) {
            double pull = pullOnTop(each);
            windy = Math.max(windy, pull);
            if (!each.combination().hasWind()) still = Math.max(still, pull);
        }
        HingeUse top = hung.hinges().get(hung.hinges().size() - 1);
        double toTopIn = hung.gate().hingePostHeight().inches() - top.z().inches() - PLATE_HEIGHT.inches() / 2;
        return new PostWall(
                new HingePlate(PLATE_HEIGHT, PLATE_THICKNESS, Length.inches(Math.max(0, toTopIn))),
                hung.gate().hingePost(),
                Force.pounds(still),
                Force.pounds(windy));
    }

    private static double pullOnTop(CaseForces each) {
        HingeForce top = each.hinges().get(each.hinges().size() - 1);
        double along = top.horizontal().pounds();
        double across = top.across().pounds();
        return Math.sqrt(along * along + across * across);
    }

    Force allowed() {
        return plate.allowable(post, NOT_PRESSED);
    }

    double utilisation() {
        return windy.pounds() / allowed().pounds();
    }

    /** Too weak without wind is a must-fix whatever the basis; too weak in wind is one on the engineered basis. */
    Finding finding(String part, DesignBasis basis) {
        if (still.compareTo(allowed()) > 0) return plate.finding(part, post, still, 0, Severity.MUST_FIX);
        Severity failed = basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
        return plate.finding(part, post, windy, 0, failed);
    }
}
