package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Positions measured from one datum, for the shop: each is rounded by itself, and a length between two is the difference of the rounded positions, so that
 * rounded parts always add up to the rounded whole.
 */
public record Ordinates(List<Offset> positions) {
    private static final double STEPS_PER_INCH = 16;

    public Ordinates {
        positions = List.copyOf(positions);
    }

    /** Each position to the nearest sixteenth of an inch, halves away from zero. */
    public List<Offset> rounded() {
        List<Offset> rounded = new ArrayList<>();
        for (Offset position : positions) {
            double steps = Math.floor(Math.abs(position.inches()) * STEPS_PER_INCH + 0.5);
            rounded.add(Offset.inches(Math.copySign(steps / STEPS_PER_INCH, position.inches())));
        }
        return List.copyOf(rounded);
    }

    /** From each position to the next, as rounded. */
    public List<Length> between() {
        List<Offset> rounded = rounded();
        List<Length> between = new ArrayList<>();
        for (int i = 1; i < rounded.size(); i++)
            between.add(Length.inches(
                    Math.abs(rounded.get(i).inches() - rounded.get(i - 1).inches())));
        return List.copyOf(between);
    }
}
