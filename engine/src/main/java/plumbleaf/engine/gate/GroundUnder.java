package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** The ground as a gate asks for it. */
public interface GroundUnder {
    /** Elevation of finished grade at a point of the run's line, or of the line of a gate that is set back from it. */
    Offset elevation(PlanPoint onTheLine);

    /**
     * Flat pieces that together cover a disc round the pin axis, without gaps; where they overlap the worst counts.
     *
     * @param leafRadius r of the leaf's latch edge, which says which shots count
     * @param cover radius of the disc
     */
    List<SurfaceFacet> around(PlanPoint pin, Length leafRadius, Length cover);

    /** The ground under a straight walk between two different places, in pieces that are straight, in order. */
    List<SurfacePiece> along(PlanPoint from, PlanPoint to);

    /** The most that the ground between two points of the run's line will rise later: pavers, sod, mulch. */
    Length laterRise(PlanPoint from, PlanPoint to);

    /**
     * What was assumed of the ground there.
     *
     * @param part the gate
     * @param used places that the result rests on
     */
    List<Finding> doubts(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used);
}
