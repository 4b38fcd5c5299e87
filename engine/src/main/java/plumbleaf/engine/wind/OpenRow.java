package plumbleaf.engine.wind;

/**
 * Force coefficients of an open screen, on its solid area.
 *
 * @param solidFrom least solid share of the row
 * @param solidBelow solid share that the next row takes
 * @param flat members with flat sides
 * @param roundSmall round members while {@code D sqrt(q)} is at most 2.5 (ft, psf)
 * @param roundLarge round members above that
 */
public record OpenRow(double solidFrom, double solidBelow, double flat, double roundSmall, double roundLarge) {}
