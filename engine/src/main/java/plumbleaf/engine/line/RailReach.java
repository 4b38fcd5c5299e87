package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Holds the longest bay against what rails from stock reach. Posts are searched along the chord of the ground, but a fair top may cross a
 * dip more steeply than the ground under it, and then a bay at the limit comes out too long. There, and only there, posts are asked to stand
 * closer and the runs are laid out once more.
 */
final class RailReach {
    private static final int MOST_TRIES = 9;

    /** Where posts moved in one place make bays too long in others so often, the whole run's limit is taken in. */
    private static final int LOCAL_TRIES = 2;

    /** What the search for posts may leave over a limit by rounding. */
    static final double ROUNDING_IN = 1e-6;

    private static final Length NO_LIMIT = Length.feet(1000);

    /** Over the limit by more than half of it a bay crosses something, and is not a rail's length too long. Judgement. */
    private static final double FAR_TOO_LONG = 1.5;

    /** Bays that are laid out again at most, all tries together: miles of fence get few tries, and then the finding names the bay. Judgement, for time's sake. */
    private static final int MOST_BAYS_AGAIN = 30_000;

    private static final int FEWEST_TRIES = LOCAL_TRIES + 1;

    /** What is taken off beside the excess itself at first, twice as much each time after, so that a top which changes with its posts still keeps the limit. */
    private static final double SPARE_IN = 1.0 / 16;

    private final Job job;
    private final SpacingLimit asked;
    private final Function<SpacingLimit, Layout> laid;
    private final Map<String, List<Tight>> tight = new LinkedHashMap<>();

    private RailReach(Job job, SpacingLimit asked, Function<SpacingLimit, Layout> laid) {
        this.job = job;
        this.asked = asked;
        this.laid = laid;
    }

    /** Bays that begin in a stretch may be no longer than this in plan. */
    private record Tight(double fromIn, double toIn, double limitIn) {
        /** Just before the stretch a bay may still end where one from its beginning would, so that the farthest next post never comes nearer as a post moves on. */
        Length longestFrom(double stationIn) {
            return stationIn > toIn ? NO_LIMIT : Length.inches(limitIn + Math.max(0, fromIn - stationIn));
        }
    }

    /** @param laid lays out all runs with a limit on the spacing of their posts */
    static Layout settled(Job job, SpacingLimit asked, Function<SpacingLimit, Layout> laid) {
        return new RailReach(job, asked, laid).settled(laid.apply(asked));
    }

    private Layout settled(Layout first) {
        Layout now = first;
        int most = mostTries(first);
        for (int tries = 0; tries < most; tries++) {
            int more = 0;
            for (RunLayout run : now.runs()) more += tighten(run, tries);
            if (more == 0) return now;
            now = laid.apply(closer());
        }
        // What no closer posts could mend, such as a stretch where none may stand, is left as it was first, and said.
        boolean givenUp = false;
        for (RunLayout run : now.runs()) if (!tooLong(run).isEmpty()) givenUp |= tight.remove(run.run()) != null;
        if (!givenUp) return now;
        return tight.isEmpty() ? first : laid.apply(closer());
    }

    private static int mostTries(Layout first) {
        int bays = 0;
        for (RunLayout run : first.runs()) bays += run.bays().size();
        return Math.max(FEWEST_TRIES, Math.min(MOST_TRIES, MOST_BAYS_AGAIN / Math.max(1, bays)));
    }

    /** @param tries so far: first only posts beside the long bays come closer, then all of the run, each time by more */
    private int tighten(RunLayout run, int tries) {
        boolean here = tries < LOCAL_TRIES;
        double spare = SPARE_IN * (1 << tries);
        List<Bay> bays = tooLong(run);
        for (Bay bay : bays) {
            double plan = bay.end().inches() - bay.start().inches();
            double most = plan
                            * job.run(run.run()).maxBayAt(bay.start().inches()).inches()
                            / bay.slopeLength().inches()
                    - spare;
            if (most <= 0) continue;
            double from = here ? bay.start().inches() - plan : 0;
            double to = here ? bay.end().inches() : Double.MAX_VALUE;
            tight.computeIfAbsent(run.run(), key -> new ArrayList<>()).add(new Tight(from, to, most));
        }
        return bays.size();
    }

    /** Bays a little too long. What is far too long, as at a cliff or over ground that nobody may dig, closer posts do not mend. */
    private List<Bay> tooLong(RunLayout run) {
        Run asBuilt = job.run(run.run());
        return run.bays().stream()
                .filter(bay -> {
                    double most = asBuilt.maxBayAt(bay.start().inches()).inches();
                    return bay.slopeLength().inches() > most + ROUNDING_IN
                            && bay.slopeLength().inches() <= FAR_TOO_LONG * most;
                })
                .toList();
    }

    /** What was asked for, and closer posts in the stretches that were found too long. */
    private SpacingLimit closer() {
        return new SpacingLimit() {
            @Override
            public Length longestFrom(String run, Offset from) {
                Length longest = asked.longestFrom(run, from);
                Length here = tightest(run, from);
                return here.compareTo(longest) < 0 ? here : longest;
            }

            @Override
            public boolean spans(String run, Offset from, Offset to) {
                return to.minus(from).inches() <= tightest(run, from).inches() && asked.spans(run, from, to);
            }
        };
    }

    private Length tightest(String run, Offset station) {
        Length longest = NO_LIMIT;
        for (Tight each : tight.getOrDefault(run, List.of())) {
            Length here = each.longestFrom(station.inches());
            if (here.compareTo(longest) < 0) longest = here;
        }
        return longest;
    }
}
