package plumbleaf.engine.design;

import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.HingePlate;

/**
 * The hinge post's wall under one hinge's plate: pulled off, and tilted by the weight that stands off the face; the two are added. A pull sideways counts like
 * one off the wall, on the safe side (judgement).
 */
record PostWall(HingePlate plate, Section post) {
    /** @param pressed U, how much the post's own bending presses its wall there */
    double use(HingePull pull, int hinge, double pressed, double tiltLbIn) {
        return pull.sidewaysLb(hinge) / allowedLb(pressed) + tiltLbIn / allowedTiltLbIn(pressed);
    }

    String numbers(HingePull pull, int hinge, double pressed, double tiltLbIn) {
        return DecimalText.whole(pull.sidewaysLb(hinge)) + " lb of " + DecimalText.whole(allowedLb(pressed)) + " and "
                + DecimalText.whole(tiltLbIn) + " lb-in of " + DecimalText.whole(allowedTiltLbIn(pressed)) + ", Qf "
                + DecimalText.fixed(HingePlate.chordStress(pressed), 2);
    }

    private double allowedLb(double pressed) {
        return plate.allowable(post, HingePlate.chordStress(pressed)).pounds();
    }

    private double allowedTiltLbIn(double pressed) {
        return plate.allowableTilt(post, HingePlate.chordStress(pressed)).poundInches();
    }
}
