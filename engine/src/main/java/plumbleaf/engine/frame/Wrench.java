package plumbleaf.engine.frame;

/** A force at a point and the moment about it. Whose axes, and on what it acts, is said where it is given. */
public record Wrench(Vector forceLb, Vector momentLbIn) {
    public static final Wrench ZERO = new Wrench(Vector.ZERO, Vector.ZERO);

    public Wrench plus(Wrench other) {
        return new Wrench(forceLb.plus(other.forceLb), momentLbIn.plus(other.momentLbIn));
    }

    public Wrench negated() {
        return new Wrench(forceLb.negated(), momentLbIn.negated());
    }

    /** The same action, its moment taken about a point that lies {@code stepIn} from the present one. */
    public Wrench movedBy(Vector stepIn) {
        return new Wrench(forceLb, momentLbIn.minus(stepIn.cross(forceLb)));
    }
}
