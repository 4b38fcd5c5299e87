package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/**
 * One leaf on one hand, and what its swing is judged by. The remedies are the same question with one thing changed.
 *
 * @param drop of the latch corner once the leaf hangs
 * @param laterRise of the ground under the swing
 * @param shotError how far a measured height may be off
 */
record SwingAsk(
        Opening opening,
        Hand hand,
        Outline outline,
        GateParts parts,
        HingeModel hinge,
        Angle opens,
        List<StandingThing> things,
        Length drop,
        Length laterRise,
        Length shotError) {
    SwingAsk {
        things = List.copyOf(things);
    }

    SwingAsk with(Outline changed) {
        return new SwingAsk(opening, hand, changed, parts, hinge, opens, things, drop, laterRise, shotError);
    }

    SwingAsk with(HingeModel changed) {
        return new SwingAsk(opening, hand, outline, parts, changed, opens, things, drop, laterRise, shotError);
    }

    SwingAsk with(Angle changed) {
        return new SwingAsk(opening, hand, outline, parts, hinge, changed, things, drop, laterRise, shotError);
    }
}
