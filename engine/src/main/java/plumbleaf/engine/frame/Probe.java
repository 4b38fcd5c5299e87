package plumbleaf.engine.frame;

/**
 * Which displacement is asked for: that of a point carried by a node, along a direction, or the turn of the node about an axis. The unit
 * load that virtual work needs is the same thing.
 */
public record Probe(String node, Vector direction, Vector armIn, Vector axis) {
    /** The node's own movement along a direction. */
    public static Probe shift(String node, Vector direction) {
        return new Probe(node, direction.unit(), Vector.ZERO, Vector.ZERO);
    }

    /** The movement of a point that the node carries rigidly at the end of an arm. */
    public static Probe shiftAt(String node, Vector armIn, Vector direction) {
        return new Probe(node, direction.unit(), armIn, Vector.ZERO);
    }

    public static Probe turn(String node, Vector axis) {
        return new Probe(node, Vector.ZERO, Vector.ZERO, axis.unit());
    }

    /** The unit load that does work on this displacement and on no other. */
    Load.AtNode unitLoad() {
        return new Load.AtNode(node, direction, armIn.cross(direction).plus(axis));
    }

    double of(Motion motion) {
        return direction.dot(motion.shiftAt(armIn)) + axis.dot(motion.turnRad());
    }
}
