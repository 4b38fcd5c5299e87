package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.view.Site;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;

/** Cuts a long site into windows that follow the fence, each small enough for a sheet on which every post can be named. */
final class SiteParts {
    /** Room round the fence for names, swings and shots beside it. */
    private static final double AROUND_IN = 1.3;

    private static final double PITCH_IN = 0.45;

    private SiteParts() {}

    /** One window: the stretch of fence that it was cut for, and the ground shown round it. */
    record Part(String run, Post first, Post last, Box window) {
        String words() {
            return run + " from " + first.id() + " to " + last.id();
        }
    }

    /** The scale at which posts have room for their names. */
    static Scale scale(Site site) {
        return Scale.fitting(site.pitchIn(), site.pitchIn(), PITCH_IN, PITCH_IN);
    }

    /** From post to post along every run, as far each time as the room on the sheet reaches. */
    static List<Part> of(Layout layout, Scale scale, Box room) {
        double wide = scale.real(room.width() - 2 * AROUND_IN);
        double high = scale.real(room.height() - 2 * AROUND_IN);
        List<Part> parts = new ArrayList<>();
        for (RunLayout run : layout.runs()) {
            List<Post> posts = run.posts();
            int first = 0;
            while (first < posts.size() - 1) {
                Box box = around(posts.get(first));
                int last = first;
                while (last + 1 < posts.size()
                        && fits(box.with(at(posts.get(last + 1).at())), wide, high))
                    box = box.with(at(posts.get(++last).at()));
                // Two posts farther apart than a sheet: the window is as large as it must be.
                if (last == first) box = box.with(at(posts.get(++last).at()));
                parts.add(new Part(run.run(), posts.get(first), posts.get(last), box.grown(scale.real(AROUND_IN / 2))));
                first = last;
            }
        }
        return parts;
    }

    private static boolean fits(Box box, double wide, double high) {
        return box.width() <= wide && box.height() <= high;
    }

    private static Box around(Post post) {
        return Box.of(at(post.at()), at(post.at()));
    }

    private static Point at(PlanPoint place) {
        return new Point(place.xIn(), place.yIn());
    }
}
