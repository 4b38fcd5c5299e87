package plumbleaf.engine.material;

import plumbleaf.engine.quantity.DecimalText;

/** Moisture content of wood: water over oven-dry wood, by weight, in per cent. */
public record Moisture(double percent) implements Comparable<Moisture> {
    /** Full of water: what the drop of a leaf is judged with. Judgement. */
    public static final Moisture WET = new Moisture(28);
    /** After a dry summer. Judgement. */
    public static final Moisture DRY = new Moisture(9);

    public Moisture {
        if (!(percent >= 0 && percent <= 250))
            throw new IllegalArgumentException(
                    "Moisture must be 0 to 250 per cent, was " + DecimalText.shortest(percent));
    }

    public static Moisture percent(double value) {
        return new Moisture(value);
    }

    /** This moisture, or the other where that is less. */
    public Moisture atMost(Moisture other) {
        return percent <= other.percent ? this : other;
    }

    @Override
    public int compareTo(Moisture other) {
        return Double.compare(percent, other.percent);
    }
}
