package plumbleaf.reference.vectors;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;

/**
 * One worked example: what goes in, what must come out, how near.
 *
 * @param inputs by key with its unit, {@code P_lb}
 * @param expected likewise
 * @param tolerance {@code rel 0.002}, {@code abs 0.02} or {@code 0.2%}
 */
public record Vector(
        String id,
        String topic,
        Map<String, String> inputs,
        Map<String, String> expected,
        String tolerance,
        String source) {

    public double in(String key) {
        return number(inputs, key);
    }

    public String text(String key) {
        return Objects.requireNonNull(inputs.get(key), () -> id + " has no input " + key);
    }

    public double out(String key) {
        return number(expected, key);
    }

    public String word(String key) {
        return Objects.requireNonNull(expected.get(key), () -> id + " has no expected " + key);
    }

    /** Compares a computed value with the printed one, within the example's tolerance. */
    public void check(String key, double computed) {
        double printed = out(key);
        assertThat(computed).as(id + " " + key + " (" + source + ")").isCloseTo(printed, within(allowed(printed)));
    }

    private double allowed(double printed) {
        String number = tolerance.replaceAll("abs|rel|exact|%", "").strip();
        double size = number.isEmpty() ? 0 : Double.parseDouble(number);
        if (tolerance.startsWith("abs")) return size + 1e-12;
        if (tolerance.endsWith("%")) size /= 100;
        return Math.abs(printed) * size + 1e-12;
    }

    private double number(Map<String, String> values, String key) {
        return Double.parseDouble(Objects.requireNonNull(values.get(key), () -> id + " has no " + key));
    }

    @Override
    public String toString() {
        return id + " " + topic;
    }
}
