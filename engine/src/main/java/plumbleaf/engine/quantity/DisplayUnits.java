package plumbleaf.engine.quantity;

/** The units a person reads and types in. Nothing inside the engine depends on it. */
public enum DisplayUnits {
    US,
    METRIC;

    /** A length as the trade writes it: {@code 4' 2-1/2"} or {@code 1283 mm}. */
    public String length(double inches) {
        return this == US ? LengthText.feetAndInches(inches) : LengthText.millimetres(inches);
    }

    public String length(Length length) {
        return length(length.inches());
    }

    public String length(Offset offset) {
        return length(offset.inches());
    }
}
