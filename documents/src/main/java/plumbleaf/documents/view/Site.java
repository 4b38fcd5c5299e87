package plumbleaf.documents.view;

import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Point;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.GroundPoint;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RunLayout;

/**
 * What a site plan shows.
 *
 * @param slides gates whose leaf slides, drawn with the strip of ground they need
 */
public record Site(Job job, Layout layout, Ground ground, List<PlacedGate> gates, List<SlidePlan> slides) {
    public Site {
        gates = List.copyOf(gates);
        slides = List.copyOf(slides);
    }

    /** Without the shots: they are the contractor's business. */
    public Site unshot() {
        Ground bare = new Ground(
                List.of(), ground.profiles(), ground.profileLines(), List.of(), List.of(), List.of(), ground.display());
        return new Site(job, layout, bare, gates, slides);
    }

    /** What all of it covers on the ground, for choosing a scale. */
    public Box extents() {
        Box box = Box.NOTHING;
        for (RunLayout run : layout.runs())
            for (PlanPoint vertex : run.line().line().vertices()) box = box.with(at(vertex));
        for (GroundPoint point : ground.points())
            box = box.with(at(point.point().plan()));
        return box;
    }

    /** How far a post is from the next on the whole, in inches; without bays nothing can be crowded. */
    public double pitchIn() {
        double length = 0;
        int bays = 0;
        for (RunLayout run : layout.runs()) {
            length += run.line().line().length().inches();
            bays += run.bays().size();
        }
        return bays == 0 ? Double.MAX_VALUE : length / bays;
    }

    static Point at(PlanPoint place) {
        return new Point(place.xIn(), place.yIn());
    }
}
