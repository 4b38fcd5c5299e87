package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.line.RunLayout;

/** Where an unrolled run is cut for a screen: at posts, so that every bay is whole in one of the strips. */
public final class StripEnds {
    /** Posts nearer than this are one place to cut at. */
    private static final double APART_IN = 1;

    private StripEnds() {}

    /**
     * The stations at which strips begin and end, in inches: the run's two ends, and posts between them that part it into strips about equally long.
     *
     * @param mostIn how long a strip may be, in inches, before it is cut; one that is cut at posts may come out longer
     */
    public static List<Double> of(RunLayout run, double mostIn) {
        double length = run.line().line().length().inches();
        int strips = (int) Math.max(1, Math.ceil(length / mostIn));
        List<Double> ends = new ArrayList<>();
        ends.add(0.0);
        for (int i = 1; i < strips; i++) {
            double wanted = length * i / strips;
            run.posts().stream()
                    .map(post -> post.station().inches())
                    .filter(station -> station > ends.get(ends.size() - 1) + APART_IN && station < length - APART_IN)
                    .min(Comparator.comparingDouble(station -> Math.abs(station - wanted)))
                    .ifPresent(ends::add);
        }
        ends.add(length);
        return ends;
    }
}
