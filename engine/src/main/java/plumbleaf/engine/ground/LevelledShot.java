package plumbleaf.engine.ground;

import plumbleaf.engine.quantity.Offset;

/** A shot with its height worked out. */
public record LevelledShot(Shot shot, Offset elevation) {
    public String id() {
        return shot.id();
    }
}
