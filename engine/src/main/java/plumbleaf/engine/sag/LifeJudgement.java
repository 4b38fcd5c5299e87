package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Length;

/**
 * What is presumed of the years after hanging. Judgement, every one of them, and shown as such.
 *
 * @param groundCreep share of the footing's drop that comes slowly under the leaf's own weight
 * @param wear how much each hinge's play grows
 * @param softSeason share of the footing's drop that comes and goes with thaw and wet ground
 * @param residual share of a person's drop at the latch edge that does not come back
 */
public record LifeJudgement(double groundCreep, Length wear, double softSeason, double residual) {
    public static final LifeJudgement USUAL = new LifeJudgement(0.3, Length.inches(1.0 / 64), 0.2, 0.05);

    public LifeJudgement {
        if (!(groundCreep >= 0 && softSeason >= 0 && residual >= 0))
            throw new IllegalArgumentException("What comes after hanging cannot be less than nothing");
    }
}
