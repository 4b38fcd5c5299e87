package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.line.RunLayout;

/** Where an unrolled run is cut for a screen: at posts, so that every bay is whole in one of the strips. */
public final class StripEnds {
    /** A strip is never shorter than this much of what the strips would be if all were alike. */
    private static final double LEAST = 0.5;

    private StripEnds() {}

    /**
     * The stations at which strips begin and end, in inches: the run's two ends, and posts between them that part it into strips about equally long.
     *
     * @param mostIn how long a strip may be, in inches, before it is cut; one that is cut at posts may come out longer
     */
    public static List<Double> of(RunLayout run, double mostIn) {
        return of(
                run.line().line().length().inches(),
                run.posts().stream().map(post -> post.station().inches()).toList(),
                mostIn);
    }

    static List<Double> of(double length, List<Double> posts, double mostIn) {
        int strips = (int) Math.max(1, Math.ceil(length / mostIn));
        double least = LEAST * length / strips;
        List<Double> ends = new ArrayList<>();
        ends.add(0.0);
        for (int i = 1; i < strips; i++) {
            double wanted = length * i / strips;
            double last = ends.get(ends.size() - 1);
            posts.stream()
                    .filter(station -> station >= last + least && station <= length - least)
                    .min(Comparator.comparingDouble(station -> Math.abs(station - wanted)))
                    .ifPresent(ends::add);
        }
        ends.add(length);
        return ends;
    }
}
