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
import plumbleaf.engine.support.Bell;

/**
 * Frost that grips the side of a footing and lifts it, and what holds against that.
 *
 * @param hole of the footing; of a driven post its own width
 * @param frostDepth down to which the ground freezes
 * @param weight of the footing and what stands on it
 * @param bell widened foot; holds only below frost
 * @param sleeve whether a smooth sleeve stands between shaft and ground in the frost zone
 * @param driven whether the shaft is steel, not concrete
 */
public record Heave(
        HoleSize hole, Length frostDepth, Force weight, Bell bell, boolean sleeve, boolean driven, SoilTables soil) {
    /** Mean bond of frozen fine soil on concrete: 65 kPa. Source: Canadian Foundation Engineering Manual 4th ed., after Penner 1974. */
    public static final Stress BOND_ON_CONCRETE = Stress.psi(65 / 6.894757293168);

    /** On steel: 100 kPa. Source: as above. */
    public static final Stress BOND_ON_STEEL = Stress.psi(100 / 6.894757293168);

    private static final double SQUARE_INCHES_PER_SQUARE_FOOT = 144;

    /** Class of clays and silts, the soils that heave. Source: IBC 2021 Table 1806.2. */
    private static final int FINE = 5;

    /** A bell holds nine times the ground's strength over its ring, by a factor of two; or the cylinder of ground over it. Judgement. */
    private static final double BELL_BEARING = 9;

    private static final double BELL_SAFETY = 2;

    /**
     * {@code T = pi D z_f tau}. Source: Canadian Foundation Engineering Manual 4th ed., after Penner 1974. Check: HeaveCheck (CX32, MX45).
     *
     * @param frozen length of the shaft in frozen ground
     */
    public static Force uplift(Length diameter, Length frozen, Stress bond) {
        return Force.pounds(Math.PI * diameter.inches() * frozen.inches() * bond.psi());
    }

    /** Pull of the frozen ground; none through a sleeve. */
    public Force lifting() {
        if (sleeve) return Force.ZERO;
        Length frozen = frostDepth.compareTo(hole.depth()) < 0 ? frostDepth : hole.depth();
        return uplift(hole.diameter(), frozen, driven ? BOND_ON_STEEL : BOND_ON_CONCRETE);
    }

    /** Cohesion of the table on the shaft below frost. Source: IBC 2021 Table 1806.2; judgement to use it upwards. */
    public Force friction() {
        double below = Math.max(0, hole.depth().inches() - frostDepth.inches());
        double psi = soil.presumed(FINE).cohesion().psf() / SQUARE_INCHES_PER_SQUARE_FOOT;
        return Force.pounds(Math.PI * hole.diameter().inches() * below * psi);
    }

    /** What a bell below frost holds in soft ground: {@code 9 su ring / 2}, or the cylinder over it up to the frost, {@code su pi D z / 2}. Judgement. */
    public Force bellHolds() {
        double d = hole.diameter().inches();
        double wide = bell.diameter().inches();
        double over = hole.depth().inches() - bell.height().inches() - frostDepth.inches();
        if (bell.isNone() || wide <= d || over < 0) return Force.ZERO;
        double su = soil.clays().get(0).undrained().psf() / SQUARE_INCHES_PER_SQUARE_FOOT;
        double ring = BELL_BEARING * su * Math.PI / 4 * (wide * wide - d * d);
        double cylinder = su * Math.PI * wide * (over + bell.height().inches());
        return Force.pounds(Math.min(ring, cylinder) / BELL_SAFETY);
    }

    public Force resisting() {
        return weight.plus(friction()).plus(bellHolds());
    }

    /**
     * Uplift against what resists it. Light fences never resist by weight, so the finding asks for a broken bond, a bell or drained ground, not for mass.
     */
    public Finding finding(String part) {
        Force up = lifting();
        String holds = DecimalText.whole(weight.pounds()) + " lb of weight, "
                + DecimalText.whole(friction().pounds()) + " lb of friction below frost"
                + (bell.isNone() ? "" : " and " + DecimalText.whole(bellHolds().pounds()) + " lb of its bell")
                + " hold it down.";
        String message = "Footing " + part + ": "
                + (sleeve
                        ? "a sleeve keeps frozen ground off its shaft; "
                        : "where the soil holds fines and water, frost may grip the shaft with up to "
                                + DecimalText.whole(up.pounds()) + " lb; ")
                + holds
                + (sleeve
                        ? ""
                        : " Depth alone does not stop this: straight smooth sides or a sleeve in the frost zone, a bell below it, no wide top,"
                                + " and drained ground.");
        Checked checked = Checked.of(
                "footing.heave",
                Severity.CAUTION,
                part,
                message,
                Basis.clause("Canadian Foundation Engineering Manual 4th ed. after Penner 1974, "
                        + (driven ? "100 kPa" : "65 kPa")),
                Measure.demand(up.pounds(), resisting().pounds(), "lb"));
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
