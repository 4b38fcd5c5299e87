package plumbleaf.engine.strength;

import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.Section;

/** A post of pipe or tube. */
record SteelPost(Section section) implements PostStrength {
    /** A post is fixed at grade and free on top. Source: AISC 360-22 Table C-A-7.1. */
    private static final double CANTILEVER = 2.1;

    @Override
    public double ratio(CombinedAction action, Length height) {
        return Interaction.ratio(section, action.action(), height);
    }

    @Override
    public Moment allowableInWind() {
        return TubeStrength.of(section).allowableWeaker();
    }

    @Override
    public Moment ultimateInWind() {
        return allowableInWind().times(TubeStrength.SAFETY);
    }

    /** With {@code Pr/(2 Pc) + Mr/Mc = 1}: {@code 1 - Pr/(2 Pc)}. Source: AISC 360-22 H1-1b. */
    @Override
    public double roomBeside(Force down, Length height) {
        double may = TubeStrength.compression(section, height.times(CANTILEVER)).pounds() / TubeStrength.SAFETY;
        return Math.max(0, 1 - down.pounds() / may / 2);
    }

    @Override
    public double stiffnessLbIn2() {
        return Steel.ELASTIC_MODULUS.psi() * Math.min(section.ixIn4(), section.iyIn4());
    }

    @Override
    public Basis clause() {
        return Basis.clause("AISC 360-22 H1.1, H3.2 (ASD, omega 1.67)");
    }
}
