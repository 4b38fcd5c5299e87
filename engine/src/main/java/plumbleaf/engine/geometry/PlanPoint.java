package plumbleaf.engine.geometry;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** A place seen from above: east and north of the job's origin. */
public record PlanPoint(Offset east, Offset north) {
    public static final PlanPoint ORIGIN = new PlanPoint(Offset.ZERO, Offset.ZERO);

    public static PlanPoint inches(double east, double north) {
        return new PlanPoint(new Offset(east), new Offset(north));
    }

    /** East of the origin, in inches: for formula bodies. */
    public double xIn() {
        return east.inches();
    }

    /** North of the origin, in inches: for formula bodies. */
    public double yIn() {
        return north.inches();
    }

    /** The place that far away in a direction; a negative distance goes back. */
    public PlanPoint moved(Direction direction, Offset distance) {
        return inches(xIn() + direction.east() * distance.inches(), yIn() + direction.north() * distance.inches());
    }

    public PlanPoint moved(Direction direction, Length distance) {
        return moved(direction, distance.asOffset());
    }

    public Length distanceTo(PlanPoint other) {
        return new Length(inchesTo(other));
    }

    double inchesTo(PlanPoint other) {
        double dx = other.xIn() - xIn();
        double dy = other.yIn() - yIn();
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The place this share of the way to another: 0 is here, 1 is there. */
    public PlanPoint towards(PlanPoint other, double share) {
        return inches(xIn() + (other.xIn() - xIn()) * share, yIn() + (other.yIn() - yIn()) * share);
    }

    /** Twice the area between here and the walk from one place to another, in square inches: + where this lies on its left, - on its right. */
    public double leftOf(PlanPoint from, PlanPoint to) {
        return (to.xIn() - from.xIn()) * (yIn() - from.yIn()) - (to.yIn() - from.yIn()) * (xIn() - from.xIn());
    }

    public SpacePoint at(Offset elevation) {
        return new SpacePoint(this, elevation);
    }

    /** Whole nanometres east, on which questions of side are decided. */
    long eastNanometres() {
        return Math.round(xIn() * NANOMETRES_PER_INCH);
    }

    /** Whole nanometres north. */
    long northNanometres() {
        return Math.round(yIn() * NANOMETRES_PER_INCH);
    }

    /** Whether both fall on the same whole nanometre. */
    public boolean isSamePlace(PlanPoint other) {
        return eastNanometres() == other.eastNanometres() && northNanometres() == other.northNanometres();
    }

    static final double NANOMETRES_PER_INCH = 25_400_000.0;
}
