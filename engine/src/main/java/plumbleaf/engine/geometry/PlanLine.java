package plumbleaf.engine.geometry;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A chain of straight legs in plan, walked from its first vertex to its last. Its stations are level distances from the start along the legs.
 *
 * @param start first vertex
 * @param directions of the legs, in order
 * @param lengths level lengths of the legs, in order, each above zero
 */
public record PlanLine(PlanPoint start, List<Direction> directions, List<Length> lengths) {
    public PlanLine {
        directions = List.copyOf(directions);
        lengths = List.copyOf(lengths);
        if (directions.isEmpty() || directions.size() != lengths.size())
            throw new IllegalArgumentException(
                    "A line needs a direction and a length for each leg, and one leg at least");
        for (Length length : lengths) {
            if (length.isZero()) throw new IllegalArgumentException("A leg needs a length above zero");
        }
    }

    /** The line through points in order; neighbours must differ. */
    public static PlanLine through(List<PlanPoint> points) {
        List<Direction> directions = new ArrayList<>();
        List<Length> lengths = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            directions.add(Direction.from(points.get(i - 1), points.get(i)));
            lengths.add(points.get(i - 1).distanceTo(points.get(i)));
        }
        return new PlanLine(points.get(0), directions, lengths);
    }

    public int legs() {
        return lengths.size();
    }

    /** Station where a leg begins; that of {@code legs()} is the end of the line. */
    public Length stationOfVertex(int vertex) {
        double station = 0;
        for (int leg = 0; leg < vertex; leg++) station += lengths.get(leg).inches();
        return new Length(station);
    }

    public Length length() {
        return stationOfVertex(legs());
    }

    public PlanPoint vertex(int vertex) {
        PlanPoint at = start;
        for (int leg = 0; leg < vertex; leg++) at = at.moved(directions.get(leg), lengths.get(leg));
        return at;
    }

    public List<PlanPoint> vertices() {
        List<PlanPoint> points = new ArrayList<>();
        for (int i = 0; i <= legs(); i++) points.add(vertex(i));
        return List.copyOf(points);
    }

    /** The leg a station lies on; a corner belongs to the leg that begins there, the end to the last. */
    public int legAt(Offset station) {
        double end = 0;
        for (int leg = 0; leg < legs() - 1; leg++) {
            end += lengths.get(leg).inches();
            if (station.inches() < end) return leg;
        }
        return legs() - 1;
    }

    /** The leg that holds both stations; where they lie on two legs, the one of the first. */
    public Direction directionAt(Offset station) {
        return directions.get(legAt(station));
    }

    public Direction directionAt(Length station) {
        return directionAt(station.asOffset());
    }

    /** The point at a station; before the start and beyond the end the first and last legs go straight on. */
    public PlanPoint pointAt(Offset station) {
        int leg = legAt(station);
        return vertex(leg)
                .moved(directions.get(leg), station.minus(stationOfVertex(leg).asOffset()));
    }

    public PlanPoint pointAt(Length station) {
        return pointAt(station.asOffset());
    }

    /** The point at a station and so far to the left of the walk (negative: to the right). */
    public PlanPoint pointAt(Offset station, Offset left) {
        return pointAt(station).moved(directionAt(station).left(), left);
    }

    /** How far the walk turns to the left at a vertex between two legs. */
    public Angle turnAt(int vertex) {
        return directions.get(vertex - 1).leftTurnTo(directions.get(vertex));
    }

    /** The nearest place on the line; of two as near, the one of smaller station. */
    public Foot footOf(PlanPoint point) {
        Foot best = footOnLeg(0, point);
        for (int leg = 1; leg < legs(); leg++) {
            Foot foot = footOnLeg(leg, point);
            if (foot.distance().compareTo(best.distance()) < 0) best = foot;
        }
        return best;
    }

    /** Every place on the line that a point lies within reach of, one a leg at most, by station; a corner counts once. */
    public List<Foot> feetWithin(Length reach, PlanPoint point) {
        List<Foot> feet = new ArrayList<>();
        for (int leg = 0; leg < legs(); leg++) {
            Foot foot = footOnLeg(leg, point);
            if (foot.distance().compareTo(reach) > 0) continue;
            boolean sameCorner = !feet.isEmpty()
                    && foot.station().inches()
                                    - feet.get(feet.size() - 1).station().inches()
                            <= reach.inches();
            if (!sameCorner) feet.add(foot);
            else if (foot.distance().compareTo(feet.get(feet.size() - 1).distance()) < 0)
                feet.set(feet.size() - 1, foot);
        }
        return List.copyOf(feet);
    }

    private Foot footOnLeg(int leg, PlanPoint point) {
        PlanPoint from = vertex(leg);
        Direction way = directions.get(leg);
        double dx = point.xIn() - from.xIn();
        double dy = point.yIn() - from.yIn();
        double along = dx * way.east() + dy * way.north();
        double left = dy * way.east() - dx * way.north();
        double on = Math.max(0, Math.min(lengths.get(leg).inches(), along));
        double distance = Math.sqrt((along - on) * (along - on) + left * left);
        return new Foot(stationOfVertex(leg).plus(new Length(on)), new Offset(left), new Length(distance));
    }
}
