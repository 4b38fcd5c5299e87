package plumbleaf.engine.ground;

/**
 * A measured point of the ground.
 *
 * @param id as the user knows it: {@code S4}
 */
public record Shot(String id, ShotPlace place, ShotHeight height, String note) {}
