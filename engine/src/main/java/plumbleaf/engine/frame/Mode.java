package plumbleaf.engine.frame;

/**
 * A way in which a frame shakes, its largest shift taken as one inch.
 *
 * @param hertz cycles a second
 * @param lbPerIn what holds it, {@code u K u}
 * @param pounds weight that goes along, {@code g u M u}
 */
public record Mode(double hertz, double lbPerIn, double pounds) {}
