package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.quantity.Length;

/** Ground for tests that leaves only swing over: nothing is laid on it later, and nothing of it is in doubt. */
interface SweptGround extends GroundUnder {
    @Override
    default List<SurfacePiece> along(PlanPoint from, PlanPoint to) {
        throw new UnsupportedOperationException("No leaf slides here");
    }

    @Override
    default Length laterRise(PlanPoint from, PlanPoint to) {
        return Length.ZERO;
    }

    @Override
    default List<Finding> doubts(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used) {
        return List.of();
    }
}
