package plumbleaf.engine.gate;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * How wide a leaf is and how it lies in its opening.
 *
 * <p>Leaf = opening less hinge gap and latch gap; the leaves of a pair share the opening less two hinge gaps and the meeting gap, which is the latch gap.
 * The grade of a raked leaf is that of the straight line over the ground from post face to post face, hinge to latch.
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

    /** What keeps a leaf of this width from being made on a hand. */
    static Optional<String> trouble(GateAsk ask, Opening opening, Hand hand, double widthIn) {
        Slope grade = grade(opening, hand, ask.ground());
        LeafSpec spec = ask.gate().leaf();
        return LeafRoom.trouble(ask, widthIn, bottom(spec, grade), top(spec, grade));
    }

    /** The outline of the only leaf of an opening. */
    static Outline single(LeafSpec spec, Length clear, Length pinOffset, Slope grade) {
        return outline(spec, singleWidthIn(spec, clear), pinOffset, grade);
    }

    /** The outline of one leaf of a pair that takes a share of the width. */
    static Outline ofPair(LeafSpec spec, Length clear, Length pinOffset, Slope grade, double share) {
        return outline(spec, pairWidthIn(spec, clear, share), pinOffset, grade);
    }

    private static Outline outline(LeafSpec spec, double widthIn, Length pinOffset, Slope grade) {
        double hingeEdge = spec.hingeGap().inches() - pinOffset.inches();
        double bottomGap = spec.bottomGap().inches();
        double below = spec.infillBelowFrame().inches();
        return new Outline(
                Offset.inches(hingeEdge),
                Offset.inches(hingeEdge + widthIn),
                Offset.inches(bottomGap),
                Offset.inches(bottomGap - below + spec.infill().inches()),
                bottom(spec, grade),
                top(spec, grade),
                spec.infillBelowFrame());
    }

    /** The question of a single leaf's swing on a hand. */
    static SwingAsk swing(GateAsk ask, Opening opening, Hand hand, Angle opens) {
        Slope grade = grade(opening, hand, ask.ground());
        Length pinOffset = ask.parts().hinge().pinOffset();
        return swing(ask, opening, hand, opens, single(ask.gate().leaf(), opening.clear(), pinOffset, grade));
    }

    /** The question of the swing of a pair's leaf: leaf a hangs on the left, seen from outside. */
    static SwingAsk swingOfPair(GateAsk ask, Opening opening, Hand hand, Angle opens, double share) {
        Slope grade = grade(opening, hand, ask.ground());
        Length pinOffset = ask.parts().hinge().pinOffset();
        return swing(ask, opening, hand, opens, ofPair(ask.gate().leaf(), opening.clear(), pinOffset, grade, share));
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
     * hand in question.
     */
    private static List<StandingThing> things(GateAsk ask, Hand hand) {
        Hand measured = ask.gate()
                .kind()
                .match(
                        swing -> new Hand(
                                swing.hinge().or(hand.hinge()), swing.swing().or(hand.swing())),
                        pair -> hand,
                        slide -> hand,
                        flagged -> hand);
        SwingAxes axes =
                SwingAxes.of(ask.opening(), measured, ask.parts().hinge().pinOffset());
        return ask.gate().obstacles().stream()
                .map(thing -> new StandingThing(
                        thing.what(), axes.plan(thing.along(), thing.side().asOffset())))
                .toList();
    }
}
