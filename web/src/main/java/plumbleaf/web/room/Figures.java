package plumbleaf.web.room;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.MetricFactor;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.Stress;

/** Numbers as a screen prints them: lengths to 1/16 in. or 1 mm, angles to 0.1 degree, forces to 1 lb or 1 N, ratios to two decimals. */
final class Figures {
    private final DisplayUnits units;

    Figures(DisplayUnits units) {
        this.units = units;
    }

    DisplayUnits units() {
        return units;
    }

    String length(Length length) {
        return units.length(length);
    }

    String length(Offset offset) {
        return units.length(offset);
    }

    /** A small length that decides: with its sign. */
    String signed(Offset offset) {
        return offset.inches() > 0 ? "+" + units.length(offset) : units.length(offset);
    }

    static String angle(Angle angle) {
        return DecimalText.upTo(angle.inDegrees(), 1) + "\u00b0";
    }

    /** What pulls or pushes; what something weighs is {@link #weight}. */
    String force(Force force) {
        return units.force(force.pounds());
    }

    /** The same of a reaction, which may lift. */
    String force(double pounds) {
        return units.force(pounds);
    }

    String weight(Force force) {
        return units.weight(force.pounds());
    }

    String moment(double poundInches) {
        return units.moment(poundInches);
    }

    String speed(Speed speed) {
        return units == DisplayUnits.US
                ? DecimalText.whole(speed.mph()) + " mph"
                : DecimalText.upTo(speed.mph() * MetricFactor.METRES_A_SECOND_PER_MPH, 1) + " m/s";
    }

    /** A stress: in ksi or MPa. */
    String stress(Stress stress) {
        return units == DisplayUnits.US
                ? DecimalText.fixed(stress.inKsi(), 1) + " ksi"
                : DecimalText.whole(stress.psi() * MetricFactor.MPA_PER_PSI) + " MPa";
    }

    static String grade(Slope slope) {
        return DecimalText.upTo(slope.inPercent(), 1) + " %";
    }

    static String ratio(double ratio) {
        return DecimalText.fixed(ratio, 2);
    }

    static String percent(double share) {
        return DecimalText.upTo(share * 100, 2) + " %";
    }
}
