package plumbleaf.documents.view;

import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;

/** Sizes that stay in whole inches in US units, as heights of shots and holes are said; millimetres where the job is metric. */
public final class Sizes {
    private Sizes() {}

    /** {@code 36-1/2"} or {@code 927 mm}. */
    public static String inches(DisplayUnits units, double inches) {
        return units == DisplayUnits.US ? LengthText.inchesOnly(inches) : units.length(inches);
    }
}
