package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The ground at a gate once a level landing lies under its swing. The gate asks it only within its opening and its swing, which the landing covers; what was
 * measured counts for the soil to move and for the doubts.
 *
 * @param was the ground as measured
 * @param level elevation of the landing
 */
record LandedGround(GroundUnder was, Offset level) implements GroundUnder {
    /** A gate with a landing at the grade of its pin, of a pair at the higher of both; any other on the ground as it is. */
    static GroundUnder of(GateAsk ask, Opening opening) {
        Gate gate = ask.gate();
        if (!gate.ground().landing()) return ask.ground();
        List<Hand> pins = gate.kind()
                .match(
                        swing -> Hand.agreeing(swing.hinge(), swing.swing()).subList(0, 1),
                        pair -> {
                            Hand left = new Hand(Side.LEFT, pair.swing().or(SwingWay.IN));
                            return List.of(left, left.otherHinge());
                        },
                        slide -> List.of(),
                        flagged -> List.of());
        double highest = Double.NEGATIVE_INFINITY;
        for (Hand hand : pins)
            highest = Math.max(highest, Gates.elevationAtPin(pins.size() > 1 ? ask.hungOn(hand) : ask, opening, hand));
        return pins.isEmpty() ? ask.ground() : new LandedGround(ask.ground(), Offset.inches(highest));
    }

    /** What is cut and filled for it under one leaf. */
    Regrade soil(String part, SwingAsk swing) {
        return Landing.of(part, swing, was, level);
    }

    @Override
    public Offset elevation(PlanPoint onTheLine) {
        return level;
    }

    @Override
    public List<SurfaceFacet> around(PlanPoint pin, Length leafRadius, Length cover) {
        return new PlaneGround(new Plane(PlanPoint.ORIGIN.at(level), 0, 0)).around(pin, leafRadius, cover);
    }

    @Override
    public List<SurfacePiece> along(PlanPoint from, PlanPoint to) {
        return was.along(from, to);
    }

    @Override
    public Length laterRise(PlanPoint from, PlanPoint to) {
        return was.laterRise(from, to);
    }

    @Override
    public List<Finding> doubts(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used) {
        return was.doubts(part, pin, leafRadius, used);
    }
}
