package plumbleaf.engine.quantity;

/** The units a person reads and types in. Nothing inside the engine depends on it. */
public enum DisplayUnits {
    US,
    METRIC;

    private static final double M3_PER_FT3 = 0.3048 * 0.3048 * 0.3048;

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

    /** A movement too small for fractions: {@code 0.157 in.} or {@code 4.0 mm}. */
    public String movement(double inches) {
        return this == US ? DecimalText.fixed(inches, 3) + " in." : DecimalText.fixed(inches * 25.4, 1) + " mm";
    }

    /** What something weighs: {@code 107 lb} or {@code 49 kg}; a handful of washers is {@code under 1 lb}, not nothing. */
    public String weight(double pounds) {
        boolean aHandful = pounds > 0 && (this == US ? pounds < 0.5 : pounds * MetricFactor.KG_PER_LB < 0.05);
        if (aHandful) return this == US ? "under 1 lb" : "under 0.1 kg";
        return weightNumber(pounds) + " " + weightUnit();
    }

    /** The number alone, for a column whose heading has the unit. */
    public String weightNumber(double pounds) {
        if (this == US) return DecimalText.whole(pounds);
        double kg = pounds * MetricFactor.KG_PER_LB;
        return Math.abs(kg) < 10 ? DecimalText.upTo(kg, 1) : DecimalText.whole(kg);
    }

    public String weightUnit() {
        return this == US ? "lb" : "kg";
    }

    /** A force: {@code 258 lb}, {@code 1.15 kN} or below one of those {@code 890 N}. */
    public String force(double pounds) {
        if (this == US) return DecimalText.whole(pounds) + " lb";
        double newtons = pounds * MetricFactor.NEWTON_PER_LB;
        return Math.abs(newtons) < 1000
                ? DecimalText.whole(newtons) + " N"
                : DecimalText.fixed(newtons / 1000, 2) + " kN";
    }

    /** A moment: {@code 1,203 lb-ft} or {@code 1.63 kNm}. */
    public String moment(double poundInches) {
        if (this == US) return DecimalText.whole(poundInches / 12) + " lb-ft";
        double nm = poundInches * MetricFactor.NM_PER_LB_IN;
        return Math.abs(nm) < 1000 ? DecimalText.whole(nm) + " Nm" : DecimalText.fixed(nm / 1000, 2) + " kNm";
    }

    /** A volume of concrete or earth: {@code 28.4 ft³} or {@code 0.80 m³}. */
    public String volume(double cubicFeet, int usPlaces) {
        return volumeNumber(cubicFeet, usPlaces) + " " + volumeUnit();
    }

    public String volumeNumber(double cubicFeet, int usPlaces) {
        return this == US
                ? DecimalText.fixed(cubicFeet, usPlaces)
                : DecimalText.fixed(cubicFeet * M3_PER_FT3, usPlaces + 1);
    }

    public String volumeUnit() {
        return this == US ? "ft\u00b3" : "m\u00b3";
    }

    /** A text that was written in US units, in those that are shown here; trade names in it stay. */
    public String said(String usWords, MetricWords metric) {
        return this == US ? usWords : metric.of(usWords);
    }
}
