package plumbleaf.web.page;

import java.util.List;

/**
 * A stacked bar against its limits.
 *
 * @param label  names the whole
 * @param value  the whole, as printed
 * @param parts  in order from the left
 * @param limits drawn as lines
 * @param full   what the bar's width stands for, above zero
 */
public record Bar(String label, String value, List<Part> parts, List<Limit> limits, double full) {
    public Bar {
        parts = List.copyOf(parts);
        limits = List.copyOf(limits);
        if (!(full > 0)) throw new IllegalArgumentException("A bar needs a width above zero, was " + full);
    }

    /** @param kind picks the hatch, 0 to 5 */
    public record Part(String label, String value, double size, int kind) {}

    public record Limit(String label, String value, double at) {}
}
