package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.SpacePoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;

/** The ground for one who asks for the surface at many places along a run: gives what {@link Ground#surfaceNear} gives, without looking at every shot each time. */
public final class NearGround {
    private final Ground ground;
    private final RunLine run;
    private final List<SpacePoint> line;
    private final Squares shots = new Squares();
    private final Squares pieces = new Squares();

    private NearGround(Ground ground, RunLine run) {
        this.ground = ground;
        this.run = run;
        this.line = ground.lineOf(run.id());
        for (int i = 0; i < ground.points().size(); i++) {
            PlanPoint at = ground.points().get(i).point().plan();
            shots.enter(i, at, at);
        }
        for (int i = 1; i < line.size(); i++)
            pieces.enter(i, line.get(i - 1).plan(), line.get(i).plan());
    }

    public static NearGround of(Ground ground, RunLine run) {
        return new NearGround(ground, run);
    }

    public Ground ground() {
        return ground;
    }

    public RunLine run() {
        return run;
    }

    /** The surface a leaf swings over, or that lies beside a bay: see {@link Ground#surfaceNear}. */
    public Surface surfaceNear(PlanPoint pin, Length reach, Slope crossSlope) {
        List<GroundPoint> near = new ArrayList<>();
        for (int i : shots.near(pin, reach)) near.add(ground.points().get(i));
        return new SurfaceMaking(ground, pin, reach).around(near, line, pieces.near(pin, reach), run, crossSlope);
    }
}
