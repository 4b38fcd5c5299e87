package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.NearGround;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.ground.Surface;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.job.MeasuredFrom;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * How high a fence stands over the ground it is measured from: a foot to either side where that was shot, its own line everywhere. Between the points looked at
 * fence and ground are both straight, so the most is at one of them.
 */
final class BesideGround {
    /** How far from the fence the adjoining grade is taken. Judgement. */
    private static final Length BESIDE = Length.feet(1);

    /** Shots this far from the bay still say something about the ground beside it. Judgement. */
    private static final Length NEAR = Length.feet(15);

    /** As far as shots along a line may be apart, so far may those beside a barrier. Judgement. */
    private static final Length NEAR_BARRIER = Length.feet(50);

    private final NearGround ground;
    private final RunLine line;
    private final Profile profile;

    BesideGround(Ground ground, RunLine line) {
        this.ground = NearGround.of(ground, line);
        this.line = line;
        this.profile = ground.profile(line.id());
    }

    /** The most, and whether every side that was asked for is known along the whole bay. */
    record Height(double mostIn, boolean known) {}

    Height of(MeasuredFrom from, double startIn, double endIn, double topFromIn, double topToIn) {
        boolean higher = from == MeasuredFrom.HIGHER_SIDE;
        double own = alongOwnLine(startIn, endIn, topFromIn, topToIn);
        Offset middle = new Offset((startIn + endIn) / 2);
        Length reach = new Length((endIn - startIn) / 2).plus(NEAR);
        Surface surface = ground.surfaceNear(line.line().pointAt(middle), reach, Slope.ZERO);
        List<Height> sides = new ArrayList<>();
        if (from != MeasuredFrom.OUTSIDE) sides.add(side(surface, 1, startIn, endIn, topFromIn, topToIn));
        if (from != MeasuredFrom.INSIDE) sides.add(side(surface, -1, startIn, endIn, topFromIn, topToIn));
        double most = higher ? Double.POSITIVE_INFINITY : own;
        boolean known = true;
        for (Height side : sides) {
            known = known && side.known();
            if (side.mostIn() > Double.NEGATIVE_INFINITY)
                most = higher ? Math.min(most, side.mostIn()) : Math.max(most, side.mostIn());
        }
        return new Height(most == Double.POSITIVE_INFINITY ? own : most, known);
    }

    /**
     * The least that a bay stands over the ground beside it, on one side and on its own line: what somebody has to climb who comes from there.
     *
     * @param inside whether they come from the inside
     */
    Height least(boolean inside, double startIn, double endIn, double topFromIn, double topToIn) {
        double own = Double.POSITIVE_INFINITY;
        for (ProfilePoint point : profile.between(new Offset(startIn), new Offset(endIn))) {
            double share = (point.station().inches() - startIn) / (endIn - startIn);
            double top = topFromIn + (topToIn - topFromIn) * share;
            own = Math.min(own, top - point.elevation().inches());
        }
        Offset middle = new Offset((startIn + endIn) / 2);
        Length reach = new Length((endIn - startIn) / 2).plus(NEAR_BARRIER);
        Surface surface = ground.surfaceNear(line.line().pointAt(middle), reach, Slope.ZERO);
        Height beside = side(surface, inside ? 1 : -1, startIn, endIn, topFromIn, topToIn, false);
        return new Height(Math.min(own, beside.mostIn()), beside.known());
    }

    private double alongOwnLine(double startIn, double endIn, double topFromIn, double topToIn) {
        double most = Double.NEGATIVE_INFINITY;
        for (ProfilePoint point : profile.between(new Offset(startIn), new Offset(endIn))) {
            double share = (point.station().inches() - startIn) / (endIn - startIn);
            double top = topFromIn + (topToIn - topFromIn) * share;
            most = Math.max(most, top - point.elevation().inches());
        }
        return most;
    }

    /** @param inwards 1 for the inside, -1 for the outside */
    private Height side(Surface surface, int inwards, double startIn, double endIn, double topFromIn, double topToIn) {
        return side(surface, inwards, startIn, endIn, topFromIn, topToIn, true);
    }

    private Height side(
            Surface surface,
            int inwards,
            double startIn,
            double endIn,
            double topFromIn,
            double topToIn,
            boolean wantsMost) {
        double none = wantsMost ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        if (!surface.findings().isEmpty()) return new Height(none, false);
        Offset middle = new Offset((startIn + endIn) / 2);
        Direction along = line.line().directionAt(middle);
        Direction inside = line.insideIsLeft() ? along.left() : along.right();
        Offset away = BESIDE.asOffset().times(inwards);
        PlanPoint first = line.line().pointAt(middle).moved(along, new Offset(startIn - middle.inches()));
        PlanPoint last = line.line().pointAt(middle).moved(along, new Offset(endIn - middle.inches()));
        double most = none;
        boolean known = true;
        for (SurfacePiece piece : surface.along(first.moved(inside, away), last.moved(inside, away))) {
            if (piece.extrapolated()) {
                known = false;
                continue;
            }
            double perInch = (topToIn - topFromIn) / (endIn - startIn);
            double atFrom = topFromIn + perInch * piece.from().inches();
            double atTo = topFromIn + perInch * piece.to().inches();
            double start = atFrom - piece.start().inches();
            double end = atTo - piece.end().inches();
            most = wantsMost ? Math.max(most, Math.max(start, end)) : Math.min(most, Math.min(start, end));
        }
        return new Height(most, known);
    }
}
