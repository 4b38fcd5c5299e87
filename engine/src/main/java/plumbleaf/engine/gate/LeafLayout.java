package plumbleaf.engine.gate;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * How wide a leaf is and how it lies in its opening.
 *
 * <p>Leaf = opening less hinge gap and latch gap; the leaves of a pair share the opening less two hinge gaps and the meeting gap, which is the latch gap.
 * The grade of a raked leaf is that of the straight line over the ground from post face to post face, hinge to latch; a leaf of a pair follows its own
 * half, from its post face to the ground below the middle of the meeting gap, so that both tops meet there. Square leaves of a pair lie level with each
 * other, as high above the ground as was asked at the higher of the two pins.
 */
final class LeafLayout {
    private LeafLayout() {}

    /** Grade of the ground between the post faces, from the hinge to the latch, + up. */
    static Slope grade(Opening opening, Hand hand, GroundUnder ground) {
        double atHinge = ground.elevation(opening.faceAt(hand.hinge())).inches();
        double atLatch = ground.elevation(opening.faceAt(hand.hinge().other())).inches();
        return Slope.ratio((atLatch - atHinge) / opening.clear().inches());
    }

    static double singleWidthIn(LeafSpec spec, Length clear) {
        return clear.inches() - spec.hingeGap().inches() - spec.latchGap().inches();
    }

    static double pairWidthIn(LeafSpec spec, Length clear, double share) {
        return (clear.inches() - 2 * spec.hingeGap().inches() - spec.latchGap().inches()) * share;
    }

    private static Slope bottom(LeafSpec spec, Slope grade) {
        return spec.shape().match(square -> Slope.ZERO, raked -> grade, sloped -> sloped.bottom());
    }

    private static Slope top(LeafSpec spec, Slope grade) {
        return spec.shape().match(square -> Slope.ZERO, raked -> grade, sloped -> sloped.top());
    }

    /** What keeps the only leaf of an opening from being made on a hand. */
    static Optional<String> trouble(GateAsk ask, Opening opening, Hand hand, double widthIn) {
        return trouble(ask, grade(opening, hand, ask.ground()), widthIn);
    }

    /** What keeps a leaf of a pair from being made. */
    static Optional<String> troubleOfPair(GateAsk ask, Opening opening, Hand hand, double share) {
        double widthIn = pairWidthIn(ask.gate().leaf(), opening.clear(), share);
        GateAsk own = ask.hungOn(hand);
        if (widthIn <= 0) return LeafRoom.trouble(own, widthIn, Slope.ZERO, Slope.ZERO);
        return trouble(own, gradeOfPair(ask, opening, hand, share), widthIn);
    }

    private static Optional<String> trouble(GateAsk ask, Slope grade, double widthIn) {
        LeafSpec spec = ask.gate().leaf();
        return LeafRoom.trouble(ask, widthIn, bottom(spec, grade), top(spec, grade));
    }

    /** Where the middle of the meeting gap of a pair lies, from the post face at this leaf's hinges. */
    private static double meetingIn(LeafSpec spec, Opening opening, double share) {
        return spec.hingeGap().inches()
                + pairWidthIn(spec, opening.clear(), share)
                + spec.latchGap().inches() / 2;
    }

    /** The plan point in the middle of the meeting gap, for a leaf on this hand that takes this share. */
    static PlanPoint meeting(LeafSpec spec, Opening opening, Hand hand, double share) {
        Direction along = opening.hingeAtStart(hand.hinge())
                ? opening.along()
                : opening.along().reversed();
        return opening.faceAt(hand.hinge()).moved(along, Offset.inches(meetingIn(spec, opening, share)));
    }

    /** Grade of the ground under one leaf of a pair, from its post face to where the leaves meet, + up. */
    static Slope gradeOfPair(GateAsk ask, Opening opening, Hand hand, double share) {
        LeafSpec spec = ask.gate().leaf();
        double atHinge = ask.ground().elevation(opening.faceAt(hand.hinge())).inches();
        double atMeeting =
                ask.ground().elevation(meeting(spec, opening, hand, share)).inches();
        return Slope.ratio((atMeeting - atHinge) / meetingIn(spec, opening, share));
    }

    /** How much higher than was asked a square leaf of a pair hangs, so that both lie level with each other. */
    private static double liftIn(GateAsk ask, Opening opening, Hand hand) {
        boolean square = ask.gate().leaf().shape().match(is -> true, raked -> false, sloped -> false);
        if (!square) return 0;
        double own = Gates.elevationAtPin(ask.hungOn(hand), opening, hand);
        Hand far = hand.otherHinge();
        double other = Gates.elevationAtPin(ask.hungOn(far), opening, far);
        return Math.max(0, other - own);
    }

    /** Under a cap the frame ends as much lower as the cap is thick, which is the infill's own height above it. */
    private static Outline outline(GateAsk ask, double widthIn, Slope grade, double liftIn) {
        LeafSpec spec = ask.gate().leaf();
        Length cap = ask.parts().cladding().capThickness();
        double hingeEdge =
                spec.hingeGap().inches() - ask.parts().hinge().pinOffset().inches();
        double bottomGap = spec.bottomGap().inches() + liftIn;
        return new Outline(
                Offset.inches(hingeEdge),
                Offset.inches(hingeEdge + widthIn),
                Offset.inches(bottomGap),
                Offset.inches(bottomGap + spec.frameHeight().inches() - cap.inches()),
                bottom(spec, grade),
                top(spec, grade),
                spec.infillBelowFrame(),
                new Crest(spec.infillAboveFrame().plus(cap), spec.top()));
    }

    /** The question of a single leaf's swing on a hand. */
    static SwingAsk swing(GateAsk ask, Opening opening, Hand hand, Angle opens) {
        Slope grade = grade(opening, hand, ask.ground());
        double widthIn = singleWidthIn(ask.gate().leaf(), opening.clear());
        return swing(ask, opening, hand, opens, outline(ask, widthIn, grade, 0));
    }

    /** The question of the swing of a pair's leaf: leaf a hangs on the left, seen from outside. */
    static SwingAsk swingOfPair(GateAsk ask, Opening opening, Hand hand, Angle opens, double share) {
        LeafSpec spec = ask.gate().leaf();
        Slope grade = gradeOfPair(ask, opening, hand, share);
        double widthIn = pairWidthIn(spec, opening.clear(), share);
        GateAsk own = ask.hungOn(hand);
        return swing(own, opening, hand, opens, outline(own, widthIn, grade, liftIn(ask, opening, hand)));
    }

    private static SwingAsk swing(GateAsk ask, Opening opening, Hand hand, Angle opens, Outline outline) {
        Gate gate = ask.gate();
        Length zone = ask.ground().laterRise(opening.face(), opening.face().moved(opening.along(), opening.clear()));
        Length laterRise = gate.loads().laterRise();
        return new SwingAsk(
                opening,
                hand,
                outline,
                ask.parts(),
                ask.parts().hinge(),
                opens,
                things(ask, hand),
                ask.drop(),
                zone.compareTo(laterRise) > 0 ? zone : laterRise,
                gate.loads().shotError());
    }

    /**
     * What stands about, as points in plan. It was measured from the hinge and to the side that were said; where the hand was not said, from those of the
     * hand in question; at a pair from the pins of leaf a, the left one.
     */
    private static List<StandingThing> things(GateAsk ask, Hand hand) {
        Hand measured = ask.gate()
                .kind()
                .match(
                        swing -> new Hand(
                                swing.hinge().or(hand.hinge()), swing.swing().or(hand.swing())),
                        pair -> new Hand(Side.LEFT, pair.swing().or(hand.swing())),
                        slide -> hand,
                        flagged -> hand);
        SwingAxes axes =
                SwingAxes.of(ask.opening(), measured, ask.parts().hinge().pin());
        return ask.gate().obstacles().stream()
                .map(thing -> new StandingThing(
                        thing.what(), axes.plan(thing.along(), thing.side().asOffset())))
                .toList();
    }
}
