package plumbleaf.engine.takeoff;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * What carries a load.
 *
 * @param payload people and tools left at home
 * @param bed length things lie on, the rack's where there is one
 * @param overhang beyond it at the rear
 * @param assumed whether nobody said so
 */
public record Truck(Force payload, Length bed, Length overhang, boolean assumed) {
    /** A pick-up with a rack, where nobody said what carries: 1,500 lb, 16 ft, and 4 ft behind, from where a load is flagged (49 CFR 393.87, from memory). Otherwise common practice, no source. */
    public static final Truck USUAL = new Truck(Force.pounds(1500), Length.feet(16), Length.feet(4), true);

    public Truck {
        if (payload.isZero() || bed.isZero()) throw new IllegalArgumentException("A truck needs a payload and a bed");
    }

    /** One that somebody described. */
    public static Truck of(Force payload, Length bed, Length overhang) {
        return new Truck(payload, bed, overhang, false);
    }

    public boolean carries(Length longest) {
        return longest.compareTo(bed.plus(overhang)) <= 0;
    }

    public int trips(Force weight) {
        return Math.max(1, (int) Math.ceil(weight.pounds() / payload.pounds() - 1e-9));
    }
}
