package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.Foot;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.NearGround;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.ground.Surface;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.ground.SurfaceHeight;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * The ground of a run as it was measured: its profile on the line, and beside it the surface of the shots within twice the leaf's r.
 *
 * @param crossSlope rise over run towards the inside, + up, where nothing was shot beside the line
 */
public record RunGround(NearGround near, Slope crossSlope) implements GroundUnder {
    /** Pins and faces of a gate on the line lie nearer than this; those of one that is set back further. */
    private static final Length OFF_LINE = Length.inches(6);

    /** Twice this is how near shots count under a gate that is set back, as under the posts beside it. */
    private static final Length OFF_LINE_REACH = Length.feet(4);

    public RunGround(Ground ground, RunLine run, Slope crossSlope) {
        this(NearGround.of(ground, run), crossSlope);
    }

    @Override
    public Offset elevation(PlanPoint onTheLine) {
        Foot foot = run().line().footOf(onTheLine);
        return foot.distance().compareTo(OFF_LINE) <= 0
                ? ground().profile(run().id()).elevationAt(foot.station().asOffset())
                : surface(onTheLine, OFF_LINE_REACH).heightAt(onTheLine).elevation();
    }

    @Override
    public List<SurfaceFacet> around(PlanPoint pin, Length leafRadius, Length cover) {
        return surface(pin, leafRadius).facetsCovering(pin, cover);
    }

    /** Over the surface of the shots within the walk's own length of its middle. */
    @Override
    public List<SurfacePiece> along(PlanPoint from, PlanPoint to) {
        return surface(from.towards(to, 0.5), from.distanceTo(to).times(0.5)).along(from, to);
    }

    @Override
    public Length laterRise(PlanPoint from, PlanPoint to) {
        Offset one = run().line().footOf(from).station().asOffset();
        Offset other = run().line().footOf(to).station().asOffset();
        return one.compareTo(other) <= 0
                ? ground().laterRise(run().id(), one, other)
                : ground().laterRise(run().id(), other, one);
    }

    /** The findings of the surface, and the place that lies furthest outside the shots. */
    @Override
    public List<Finding> doubts(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used) {
        Surface surface = surface(pin, leafRadius);
        List<Finding> doubts = new ArrayList<>(surface.findings());
        Length furthest = Length.ZERO;
        Optional<Finding> worst = Optional.empty();
        for (PlanPoint place : used) {
            SurfaceHeight height = surface.heightAt(place);
            if (height.beyond().compareTo(furthest) <= 0) continue;
            furthest = height.beyond();
            worst = surface.extrapolation(part, place, ground().display());
        }
        worst.ifPresent(doubts::add);
        return List.copyOf(doubts);
    }

    private Ground ground() {
        return near.ground();
    }

    private RunLine run() {
        return near.run();
    }

    private Surface surface(PlanPoint pin, Length leafRadius) {
        return near.surfaceNear(pin, leafRadius.times(2), crossSlope);
    }
}
