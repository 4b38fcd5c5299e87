package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.PostStretch;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.support.Support;

/**
 * Where the posts of a run need no hole: there nothing that lies in the ground is in their way.
 *
 * @param freeFromIn where parts without holes begin
 * @param freeToIn where they end
 */
record DugParts(List<Double> freeFromIn, List<Double> freeToIn) {
    DugParts {
        freeFromIn = List.copyOf(freeFromIn);
        freeToIn = List.copyOf(freeToIn);
    }

    static boolean digs(Support posts) {
        return posts.match(footing -> true, driven -> true, plate -> false, core -> false, wall -> false, old -> false);
    }

    static DugParts of(Run run) {
        List<Double> from = new ArrayList<>();
        List<Double> to = new ArrayList<>();
        boolean free = !digs(run.posts());
        double seen = Double.NEGATIVE_INFINITY;
        for (PostStretch part : run.otherPosts()) {
            if (free && part.from().inches() > seen) {
                from.add(seen);
                to.add(part.from().inches());
            }
            if (!digs(part.posts())) {
                from.add(part.from().inches());
                to.add(part.to().inches());
            }
            seen = part.to().inches();
        }
        if (free) {
            from.add(seen);
            to.add(Double.POSITIVE_INFINITY);
        }
        return new DugParts(from, to);
    }

    /** What stays closed: each stretch without the parts that need no hole. */
    List<ClosedStretch> cut(List<ClosedStretch> closed) {
        List<ClosedStretch> rest = closed;
        for (int i = 0; i < freeFromIn.size(); i++) rest = without(rest, freeFromIn.get(i), freeToIn.get(i));
        return rest;
    }

    private static List<ClosedStretch> without(List<ClosedStretch> all, double from, double to) {
        List<ClosedStretch> rest = new ArrayList<>();
        for (ClosedStretch one : all) {
            if (one.toIn() <= from || one.fromIn() >= to) {
                rest.add(one);
                continue;
            }
            if (one.fromIn() < from) rest.add(one.between(one.fromIn(), from));
            if (one.toIn() > to) rest.add(one.between(to, one.toIn()));
        }
        return List.copyOf(rest);
    }
}
