package plumbleaf.engine.wind;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * One way the wind may meet a stretch of fence.
 *
 * @param name {@code A} for uniform, {@code C-start} and {@code C-end} by the windward end, {@code open} for an open screen
 * @param strips side by side from 0 to the stretch's length
 */
public record WindCase(String name, List<PressureStrip> strips) {
    public WindCase {
        strips = List.copyOf(strips);
    }

    /** Pressure times length between two stations, in psf ft. */
    double sumPsfFt(Length from, Length to) {
        double sum = 0;
        for (PressureStrip strip : strips) {
            double start = Math.max(strip.from().inFeet(), from.inFeet());
            double end = Math.min(strip.to().inFeet(), to.inFeet());
            if (end > start) sum += strip.pressure().psf() * (end - start);
        }
        return sum;
    }

    /** Coefficient times length between two stations, in ft. */
    double sumCoefficientFt(Length from, Length to) {
        double sum = 0;
        for (PressureStrip strip : strips) {
            double start = Math.max(strip.from().inFeet(), from.inFeet());
            double end = Math.min(strip.to().inFeet(), to.inFeet());
            if (end > start) sum += strip.coefficient() * (end - start);
        }
        return sum;
    }

    WindCase times(double factor) {
        return new WindCase(
                name,
                strips.stream()
                        .map(strip -> new PressureStrip(
                                strip.from(), strip.to(), strip.pressure().times(factor), strip.coefficient() * factor))
                        .toList());
    }
}
