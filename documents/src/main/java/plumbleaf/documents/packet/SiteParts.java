package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.view.Site;
import plumbleaf.documents.view.SitePlan;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;

/** Cuts a long site into windows that follow the fence, each small enough for a sheet, or a narrow screen, on which every post can be named. */
public final class SiteParts {
    /** Room round the fence for names, swings and shots beside it. */
    private static final double AROUND_IN = 1.1;

    private static final double PITCH_IN = 0.45;

    private SiteParts() {}

    /** One window: the stretch of fence that it was cut for, the ground shown round it, and its drawing. */
    public record Part(String run, Post first, Post last, Box window, Drawing drawing) {
        public String words() {
            return run + " from " + first.id() + " to " + last.id();
        }
    }

    /** The scale at which posts have room for their names. */
    static Scale scale(Site site) {
        return Scale.fitting(site.job().display(), site.pitchIn(), site.pitchIn(), PITCH_IN, PITCH_IN);
    }

    /** From post to post along every run, as far each time as the room on the sheet reaches, names included. */
    public static List<Part> of(Site site, Scale scale, Box room) {
        List<Part> parts = new ArrayList<>();
        for (RunLayout run : site.layout().runs()) {
            List<Post> posts = run.posts();
            int first = 0;
            while (first < posts.size() - 1) {
                int last = reach(posts, first, scale, room);
                Part part = part(site, run, first, last, scale);
                // Names beside the last posts may need more than the usual room.
                while (last > first + 1 && !fits(part.drawing(), room)) part = part(site, run, first, --last, scale);
                parts.add(part);
                first = last;
            }
        }
        return parts;
    }

    private static Part part(Site site, RunLayout run, int first, int last, Scale scale) {
        Box box = Box.NOTHING;
        for (Post post : run.posts().subList(first, last + 1)) box = box.with(at(post.at()));
        Box window = box.grown(scale.real(AROUND_IN / 2));
        return new Part(
                run.run(), run.posts().get(first), run.posts().get(last), window, SitePlan.part(site, scale, window));
    }

    /** The last post that the room reaches from the first; the next one at least, however far off. */
    private static int reach(List<Post> posts, int first, Scale scale, Box room) {
        double wide = scale.real(room.width() - 2 * AROUND_IN);
        double high = scale.real(room.height() - 2 * AROUND_IN - Viewport.TITLE_IN);
        Box box = Box.NOTHING.with(at(posts.get(first).at()));
        int last = first;
        while (last + 1 < posts.size()) {
            box = box.with(at(posts.get(last + 1).at()));
            if (box.width() > wide || box.height() > high) break;
            last++;
        }
        return Math.max(last, first + 1);
    }

    private static boolean fits(Drawing drawing, Box room) {
        return drawing.paperWidthIn() <= room.width() && drawing.paperHeightIn() + Viewport.TITLE_IN <= room.height();
    }

    private static Point at(PlanPoint place) {
        return new Point(place.xIn(), place.yIn());
    }
}
