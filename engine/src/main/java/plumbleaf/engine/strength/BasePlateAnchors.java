package plumbleaf.engine.strength;

import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.support.Anchors;
import plumbleaf.engine.support.BasePlate;
import plumbleaf.engine.support.Slab;

/**
 * One combination on a square base plate with four anchors: what the anchors are pulled and pushed with, and how thick the plate must be.
 *
 * <p>Each way the plate presses on a strip of concrete at its far edge and two anchors pull: {@code N + T = q Y, T f + q Y (B/2 - Y/2) = M}. Both ways are
 * added for the corner anchor, which is worst at 45 degrees; half of the weight helps each way.
 *
 * @param pull on the most loaded anchor, prying included
 * @param prying of it
 * @param push on each anchor
 * @param crushing of the concrete under the plate, over what it may bear; above 1 there is no balance
 * @param plateNeeded thickness at which the plate bends no more than it may
 */
record BasePlateAnchors(
        CombinedAction action, Force pull, Force prying, Force push, double crushing, Length plateNeeded) {
    /** Omega of concrete in bearing. Source: AISC 360-22 J8. */
    static final double BEARING_SAFETY = 2.31;

    static final double BENDING_SAFETY = 1.67;

    /** Plate of A36. */
    static final Stress YIELD = Stress.ksi(36);

    static final Stress ULTIMATE = Stress.ksi(58);

    /** Hole in the plate over the anchor. Common practice, no source. */
    static final double HOLE_OVER_ANCHOR_IN = 0.125;

    /**
     * Source: AISC Design Guide 1, 2nd edition, 3.4 (large moment) and 3.3.2 (bending lines), from memory; prying AISC Manual part 9, from memory.
     * Check: BasePlateCheck (statics), BasePlateAnchorsTest.
     */
    static BasePlateAnchors of(CombinedAction action, Section post, BasePlate plate, Anchors anchors, Slab slab) {
        double strip = plate.side().inches() * bearing(slab).psi();
        double down = Math.max(0, action.action().down().pounds()) / 2;
        OneWay along = OneWay.of(Math.abs(action.action().momentAlong().poundInches()), down, plate, strip);
        OneWay across = OneWay.of(Math.abs(action.action().momentAcross().poundInches()), down, plate, strip);
        double lifted = Math.max(0, -action.action().down().pounds()) / 4;
        double pull = (along.pairLb + across.pairLb) / 2 + lifted;
        double lineIn = bendingLineIn(post);
        double leverIn = Math.max(0, plate.anchorSpacing().inches() / 2 - lineIn);
        double prying = prying(pull, leverIn, plate, anchors);
        double torsion = Math.abs(action.action().torsion().poundInches());
        double push = action.action().push().pounds() / 4
                + torsion / (4 * plate.anchorSpacing().inches() / Math.sqrt(2));
        double needed = Math.max(
                tensionThickness(pull, leverIn, plate),
                compressionThickness(Math.max(along.strip(), across.strip()), lineIn, plate, bearing(slab)));
        return new BasePlateAnchors(
                action,
                Force.pounds(pull + prying),
                Force.pounds(prying),
                Force.pounds(push),
                Math.max(along.crushing, across.crushing),
                Length.inches(needed));
    }

    /** {@code 0.85 f'c / 2.31}; concrete beside the plate is not counted. Source: AISC 360-22 J8. */
    static Stress bearing(Slab slab) {
        return slab.strength().times(0.85 / BEARING_SAFETY);
    }

    /** A plate bends along a line inside the post: 0.8 of a round one's width, 0.95 of a square one's. Source: AISC Design Guide 1, 3.1.2, from memory. */
    static double bendingLineIn(Section post) {
        return post.isRound()
                ? 0.4 * post.depth().inches()
                : 0.475 * Math.min(post.depth().inches(), post.width().inches());
    }

    /** Width of plate that one anchor bends: 45 degrees either side, at most half the plate. */
    static double widthIn(double leverIn, BasePlate plate) {
        return Math.min(plate.side().inches() / 2, 2 * leverIn);
    }

    static double tensionThickness(double pullLb, double leverIn, BasePlate plate) {
        if (leverIn <= 0) return 0;
        return Math.sqrt(4 * BENDING_SAFETY * pullLb * leverIn / (YIELD.psi() * widthIn(leverIn, plate)));
    }

    static double compressionThickness(double stripIn, double lineIn, BasePlate plate, Stress bearing) {
        double outIn = Math.max(0, plate.side().inches() / 2 - lineIn);
        double pressedIn = Math.min(stripIn, outIn);
        double perInch = bearing.psi() * pressedIn * (outIn - pressedIn / 2);
        return Math.sqrt(4 * BENDING_SAFETY * perInch / YIELD.psi());
    }

    /**
     * What a plate that bends adds to its anchor's pull: {@code Q = d a r p Fu t2 / (4 O b'), a = (4 O T b' / (p Fu t2) - 1) / d} between 0 and 1, d the net
     * width share at the anchor line, r = b'/a'. Nothing in a plate thick enough. Source: AISC Manual part 9, from memory.
     */
    private static double prying(double pullLb, double leverIn, BasePlate plate, Anchors anchors) {
        double bIn = leverIn - anchors.diameter().inches() / 2;
        if (bIn <= 0 || pullLb <= 0) return 0;
        double widthIn = widthIn(leverIn, plate);
        double net = Math.max(0.1, 1 - (anchors.diameter().inches() + HOLE_OVER_ANCHOR_IN) / widthIn);
        double outIn = Math.min(plate.anchorEdge().inches(), 1.25 * leverIn)
                + anchors.diameter().inches() / 2;
        double t = plate.thickness().inches();
        double strength = widthIn * ULTIMATE.psi() * t * t / (4 * BENDING_SAFETY * bIn);
        double bent = Math.max(0, Math.min(1, (pullLb / strength - 1) / net));
        return net * bent * bIn / outIn * strength;
    }

    /** Balance about one axis. */
    record OneWay(double pairLb, double stripIn, double crushing) {
        double strip() {
            return stripIn;
        }

        /** {@code Y = (B/2 + f) - sqrt((B/2 + f)^2 - 2 (M + N f) / q)}; above 1 the square root has nothing left and all of the strip is used. */
        static OneWay of(double momentLbIn, double downLb, BasePlate plate, double stripLbPerIn) {
            double half = plate.side().inches() / 2;
            double arm = plate.anchorSpacing().inches() / 2;
            double tipping = 2 * (momentLbIn + downLb * arm) / stripLbPerIn;
            double room = (half + arm) * (half + arm);
            double strip = half + arm - Math.sqrt(Math.max(0, room - tipping));
            return new OneWay(Math.max(0, stripLbPerIn * strip - downLb), strip, tipping / room);
        }
    }

    /** How a plate with its anchors turns: two anchors and their half of the plate give, about the plate's far edge. In lb-in per radian. Judgement. */
    static double turningStiffness(Section post, BasePlate plate, Anchors anchors) {
        double e = Steel.ELASTIC_MODULUS.psi();
        double t = plate.thickness().inches();
        double lever = Math.max(t, plate.anchorSpacing().inches() / 2 - bendingLineIn(post));
        double bending = 3 * e * plate.side().inches() * t * t * t / 12 / (lever * lever * lever);
        double d = anchors.diameter().inches();
        double stretching =
                2 * e * 0.75 * Math.PI * d * d / 4 / (anchors.embedment().inches() + t);
        double arm = plate.anchorSpacing().inches() / 2 + plate.side().inches() / 2;
        return arm * arm / (1 / bending + 1 / stretching);
    }

    Moment moment() {
        return action.action().size();
    }
}
