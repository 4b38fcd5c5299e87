package plumbleaf.engine.frame;

/** How a node or a point of a member has moved, along and about the global axes. */
public record Motion(Vector shiftIn, Vector turnRad) {
    public double along(Dof dof) {
        return switch (dof) {
            case UX -> shiftIn.x();
            case UY -> shiftIn.y();
            case UZ -> shiftIn.z();
            case RX -> turnRad.x();
            case RY -> turnRad.y();
            case RZ -> turnRad.z();
        };
    }

    /** The shift of a point carried rigidly at the end of an arm. */
    public Vector shiftAt(Vector armIn) {
        return shiftIn.plus(turnRad.cross(armIn));
    }
}
