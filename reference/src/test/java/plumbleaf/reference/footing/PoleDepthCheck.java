package plumbleaf.reference.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.PoleDepth;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Depth of a pole in the ground, with and without restraint at grade, against printed calculations by the same code formulas.
 * Source: IBC 1807.3.2 examples: Engineering with the Spreadsheet, ASCE Press 2006, chapter 16 (E1, E2); footing calculation to IBC 2018 (E3); light
 * pole calculation to IBC 2009 (E4); engineering forum threads 266547 and 276653 (E5, E6).
 * Tolerance: from the printed digits, 0.05 to 1 % (column tolerance of the table).
 */
class PoleDepthCheck {
    private static final double METRE_IN = 1 / 0.0254;
    private static final double KN_LB = 1000 / 4.4482216152605;

    private static Length depth(double push, double height, double psfPerFt, double widthFt) {
        return PoleDepth.nonconstrained(
                Force.pounds(push), Moment.poundFeet(push * height), Pressure.psf(psfPerFt), Length.feet(widthFt));
    }

    @Test
    void withoutRestraint() {
        for (String id : new String[] {"E1", "E5"}) {
            Vector vector = Vectors.one("footing", id);
            Length depth = depth(vector.in("P_lb"), vector.in("h_ft"), vector.in("S_psf_per_ft"), vector.in("b_ft"));
            vector.check("d_ft", depth.inFeet());
        }
    }

    @Test
    void whatADepthResistsIsTheFormulaTurnedRound() {
        Vector vector = Vectors.one("footing", "E1");
        Length depth = depth(vector.in("P_lb"), vector.in("h_ft"), vector.in("S_psf_per_ft"), vector.in("b_ft"));
        Force back = PoleDepth.allowedPush(
                depth,
                Length.feet(vector.in("h_ft")),
                Pressure.psf(vector.in("S_psf_per_ft")),
                Length.feet(vector.in("b_ft")));
        assertThat(back.pounds()).isCloseTo(vector.in("P_lb"), within(1e-6));
    }

    @Test
    void restrainedByASlab() {
        Vector second = Vectors.one("footing", "E2");
        Length plain = PoleDepth.constrained(
                Moment.poundFeet(second.in("P_lb") * second.in("h_ft")),
                Pressure.psf(second.in("S_psf_per_ft")),
                Length.feet(second.in("b_ft")));
        second.check("d_ft", plain.inFeet());
        Vector third = Vectors.one("footing", "E3");
        Length doubled = PoleDepth.constrained(
                Moment.poundFeet(third.in("P_lb") * third.in("h_ft")),
                Pressure.psf(third.in("S_psf_per_ft") * third.in("F")),
                Length.feet(third.in("b_ft")));
        third.check("d_m", doubled.inches() / METRE_IN);
    }

    /** A square footing counts with its diagonal; the moment of the load is given beside it. */
    @Test
    void oneTrialInMetres() {
        Vector vector = Vectors.one("footing", "E4");
        double psfPerFt = vector.in("S_kPa_per_m") * 20.885434233 * 0.3048;
        Length trial = PoleDepth.fromTrial(
                Force.pounds(vector.in("P_kN") * KN_LB),
                Moment.poundInches(vector.in("M_kNm") * KN_LB * METRE_IN),
                Pressure.psf(psfPerFt),
                Length.inches(vector.in("side_m") * Math.sqrt(2) * METRE_IN),
                Length.inches(vector.in("d_trial_m") * METRE_IN));
        vector.check("d_m", trial.inches() / METRE_IN);
    }

    /** The example prints A of one trial; the depth that follows from A is compared. */
    @Test
    void oneStepOfTheIteration() {
        Vector vector = Vectors.one("footing", "E6");
        Length height = Length.feet(4);
        Length step = PoleDepth.fromTrial(
                Force.pounds(vector.in("P_lb")),
                Moment.poundFeet(vector.in("P_lb") * height.inFeet()),
                Pressure.psf(vector.in("S_psf_per_ft") * vector.in("factor")),
                Length.feet(vector.in("b_ft")),
                Length.feet(vector.in("d_trial_ft")));
        double aFt = vector.out("A_ft");
        double wanted = 0.5 * aFt * (1 + Math.sqrt(1 + 4.36 * height.inFeet() / aFt));
        assertThat(step.inFeet()).isCloseTo(wanted, within(wanted * 0.001));
    }

    /** With the cap at 12 ft the same formula gives 54.6 ft where a sheet that forgot the cap prints 30.55. */
    @Test
    void pressureStopsGrowingAtTwelveFeet() {
        Vector vector = Vectors.one("footing", "E7");
        Length depth = depth(
                vector.in("P_kip") * 1000,
                vector.in("h_ft"),
                vector.in("S_ksf_per_ft") * 1000 * vector.in("F"),
                vector.in("b_ft"));
        assertThat(depth.inFeet()).isCloseTo(54.6, within(0.05));
    }

    /** A moment alone is the limit of a vanishing push at a growing height: {@code d3 = 7.652 M / (S b)}. */
    @Test
    void momentAloneIsTheLimit() {
        Moment moment = Moment.poundFeet(340);
        Length alone = PoleDepth.nonconstrained(Force.ZERO, moment, Pressure.psf(150), Length.feet(1));
        assertThat(alone.inFeet()).isCloseTo(Math.cbrt(7.652 * 340 / 150), within(0.0005));
        Length nearly = PoleDepth.nonconstrained(Force.pounds(1e-6), moment, Pressure.psf(150), Length.feet(1));
        assertThat(nearly.inFeet()).isCloseTo(alone.inFeet(), within(1e-6));
    }
}
