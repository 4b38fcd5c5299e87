package plumbleaf.engine.wind;

/**
 * One cell of the solid wall table.
 *
 * @param heightRatio s/h, height of the surface over height of its top
 * @param aspect B/s, length over height of the surface
 */
public record WallCell(double heightRatio, double aspect, double coefficient) {}
