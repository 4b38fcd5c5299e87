package plumbleaf.web.room;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.Speed;

/** Numbers as a screen prints them: lengths to 1/16 in. or 1 mm, angles to 0.1 degree, forces to 1 lb, moments to 1 lb-ft, ratios to two decimals. */
final class Figures {
    private final DisplayUnits units;

    Figures(DisplayUnits units) {
        this.units = units;
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

    static String force(Force force) {
        return DecimalText.whole(force.pounds()) + " lb";
    }

    static String moment(Moment moment) {
        return DecimalText.whole(moment.inPoundFeet()) + " lb-ft";
    }

    static String speed(Speed speed) {
        return DecimalText.whole(speed.mph()) + " mph";
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
