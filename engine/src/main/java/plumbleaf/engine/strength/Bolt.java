package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * One steel bolt in shear and tension.
 *
 * @param ultimate Fu of its steel
 * @param threadsInShear whether its thread lies in the shear plane
 */
public record Bolt(Length diameter, Stress ultimate, boolean threadsInShear) {
    /** Omega of bolts. Source: AISC 360-22 J3.7. */
    public static final double SAFETY = 2.0;

    /** ASTM A307 and SAE grade 2: what is sold as a hot-dip hex bolt. Source: ASTM A307, tensile 60 ksi. */
    public static final Stress A307 = Stress.ksi(60);

    /** Shares of Fu. Source: AISC 360-22 Table J3.2, threaded parts. */
    private static final double TENSION = 0.75;

    private static final double SHEAR_THREADS_IN = 0.450;
    private static final double SHEAR_THREADS_OUT = 0.563;

    private double areaIn2() {
        return Math.PI / 4 * diameter.inches() * diameter.inches();
    }

    private double shearPsi() {
        return ultimate.psi() * (threadsInShear ? SHEAR_THREADS_IN : SHEAR_THREADS_OUT);
    }

    private double tensionPsi() {
        return ultimate.psi() * TENSION;
    }

    /** {@code Fnv Ab} on the nominal area, one shear plane. Source: AISC 360-22 J3-1, Table J3.2. Check: BoltCheck. */
    public Force nominalShear() {
        return Force.pounds(shearPsi() * areaIn2());
    }

    /** {@code Fnt Ab}. Source: AISC 360-22 J3-1, Table J3.2. Check: BoltCheck. */
    public Force nominalTension() {
        return Force.pounds(tensionPsi() * areaIn2());
    }

    /**
     * Nominal tension left beside a shear: {@code (1.3 Fnt - Fnt frv / (share Fnv)) Ab <= Fnt Ab}, frv the shear stress, share 1/omega in allowable-stress
     * design and phi in load-and-resistance design. Source: AISC 360-22 J3-3. Check: BoltCheck (Example J.3).
     */
    public Force nominalTensionBeside(Force shear, double share) {
        double frv = shear.pounds() / areaIn2();
        double left = 1.3 * tensionPsi() - tensionPsi() * frv / (share * shearPsi());
        return Force.pounds(Math.max(0, Math.min(tensionPsi(), left)) * areaIn2());
    }

    /** Utilisation in allowable-stress design; above 1 fails. Shear that leaves no pull at all has used 1.3 of the bolt by itself, J3-3. */
    public double use(Force shear, Force tension) {
        double inShear = shear.pounds() * SAFETY / nominalShear().pounds();
        double left = nominalTensionBeside(shear, 1 / SAFETY).pounds() / SAFETY;
        if (left <= 0) return inShear;
        return Math.max(inShear, tension.pounds() / left);
    }

    /** Tearout of a wall towards an edge: {@code 1.2 lc t Fu}, lc clear from hole to edge. Source: AISC 360-22 J3.11b. */
    public static Force tearout(Length clear, Length wall, Stress ultimate) {
        return Force.pounds(1.2 * clear.inches() * wall.inches() * ultimate.psi());
    }
}
