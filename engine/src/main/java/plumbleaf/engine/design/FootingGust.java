package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.footing.FootingDesign;
import plumbleaf.engine.footing.LateralSoil;
import plumbleaf.engine.footing.PoleDepth;
import plumbleaf.engine.footing.PoleStrength;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/** How much of a footing's lateral strength an action at grade takes, whatever its height: the code's allowable, and what it is expected to stand. */
record FootingGust(FootingDesign footing, Soil soil, Standards standards) {
    /** A moment alone is a push from very far up. */
    private static final double FAR_IN = 1e5;

    String part() {
        return footing.part();
    }

    boolean isKnown() {
        return depth().inches() > 0
                && lateral().perFoot().psf() > 0
                && PoleStrength.expected(footing.hole(), Length.ZERO, soil, standards.soil())
                        .isPresent();
    }

    /** Half an inch of movement does harm at a gate. */
    private LateralSoil lateral() {
        return LateralSoil.of(soil, standards.soil(), false);
    }

    private Length depth() {
        return Length.inches(
                Math.max(0, footing.hole().depth().inches() - soil.deadTop().inches()));
    }

    double allowableUse(BaseAction action) {
        LateralSoil lateral = lateral();
        Length above = height(action).plus(lateral.looseTop());
        Force allowed = PoleDepth.allowedPush(
                depth(), above, lateral.perFoot(), footing.hole().diameter());
        return pushLb(action) / allowed.pounds();
    }

    double ultimateUse(BaseAction action) {
        Optional<Force> expected = PoleStrength.expected(footing.hole(), height(action), soil, standards.soil());
        return pushLb(action) / expected.orElseThrow().pounds();
    }

    private static double pushLb(BaseAction action) {
        return Math.max(action.push().pounds(), action.size().poundInches() / FAR_IN);
    }

    private static Length height(BaseAction action) {
        double push = pushLb(action);
        return Length.inches(push > 0 ? action.size().poundInches() / push : 0);
    }
}
