package plumbleaf.engine.footing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/** Frost that grips the side of a footing and lifts it. */
public final class Heave {
    /** Mean bond of frozen fine soil on concrete: 65 kPa. Source: Canadian Foundation Engineering Manual 4th ed., after Penner 1974. */
    public static final Stress BOND_ON_CONCRETE = Stress.psi(65 / 6.894757293168);

    private Heave() {}

    /**
     * {@code T = pi D z_f tau}. Source: Canadian Foundation Engineering Manual 4th ed., after Penner 1974. Check: HeaveCheck (CX32, MX45).
     *
     * @param frozen length of the shaft in frozen ground
     */
    public static Force uplift(Length diameter, Length frozen, Stress bond) {
        return Force.pounds(Math.PI * diameter.inches() * frozen.inches() * bond.psi());
    }

    /**
     * Uplift against weight, on what resists it. Light fences never resist by weight, so the finding asks for a broken bond, a bell or drained ground, not for
     * mass.
     *
     * @param resisting weight of the footing and what stands on it
     */
    public static Finding finding(String part, HoleSize hole, Length frostDepth, Force resisting) {
        Length frozen = frostDepth.compareTo(hole.depth()) < 0 ? frostDepth : hole.depth();
        Force up = uplift(hole.diameter(), frozen, BOND_ON_CONCRETE);
        String message =
                "Footing " + part + ": where the soil holds fines and water, frost may grip the shaft with up to "
                        + DecimalText.whole(up.pounds()) + " lb; " + DecimalText.whole(resisting.pounds())
                        + " lb hold it down. Depth alone does not stop this: straight smooth sides or a sleeve in the frost zone, a bell below it, no wide top,"
                        + " and drained ground.";
        Checked checked = Checked.of(
                "footing.heave",
                Severity.CAUTION,
                part,
                message,
                Basis.clause("Canadian Foundation Engineering Manual 4th ed. after Penner 1974, 65 kPa"),
                Measure.demand(up.pounds(), resisting.pounds(), "lb"));
        return checked.severity() == Severity.PASS
                ? checked
                : checked.withRemedies(List.of(new Remedy(
                        "sleeve",
                        "set it in a smooth sleeve down to the frost line",
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty())));
    }
}
