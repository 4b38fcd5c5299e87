package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Triangulation;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Reads through the points as a careful surveyor would: what is missing, doubled, far apart, or off its neighbours. Nothing is changed. */
final class GroundReview {
    /** A stretch shorter than this past the last shot needs no word: half a mark of the tape. */
    private static final double SILENT_IN = 1.0 / 32;

    /** Two shots nearer than this stand on one place: the foot of a rod. */
    private static final Length ONE_PLACE = Length.inches(0.5);

    /** Ground with more slips than this is rough ground: it is told without looking again. */
    private static final int MOST_BLUNDERS = 20;

    /** How many of the nearest points stand in for the ground round a shot. */
    private static final int NEIGHBOURS = 12;

    private final GroundFindings say;
    private final List<Finding> findings = new ArrayList<>();

    private GroundReview(GroundFindings say) {
        this.say = say;
    }

    static List<Finding> of(List<GroundPoint> points, List<Profile> profiles, List<RunLine> runs, GroundFindings say) {
        GroundReview review = new GroundReview(say);
        review.doubled(points);
        for (int i = 0; i < runs.size(); i++) review.profile(profiles.get(i), runs.get(i));
        review.besideTheLines(points);
        review.findings.addAll(FarShots.of(points, say));
        return List.copyOf(review.findings);
    }

    /** Looks from west to east, so that each point meets only those within reach. */
    private void doubled(List<GroundPoint> points) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) order.add(i);
        order.sort(Comparator.comparingDouble(i -> points.get(i).point().plan().xIn()));
        TreeSet<Pair> pairs = new TreeSet<>();
        for (int i = 0; i < order.size(); i++) {
            PlanPoint here = points.get(order.get(i)).point().plan();
            for (int j = i + 1; j < order.size(); j++) {
                PlanPoint there = points.get(order.get(j)).point().plan();
                if (there.xIn() - here.xIn() > ONE_PLACE.inches()) break;
                if (here.distanceTo(there).compareTo(ONE_PLACE) <= 0)
                    pairs.add(new Pair(Math.min(order.get(i), order.get(j)), Math.max(order.get(i), order.get(j))));
            }
        }
        for (Pair pair : pairs) {
            GroundPoint first = points.get(pair.first());
            GroundPoint second = points.get(pair.second());
            Length apart =
                    second.point().elevation().minus(first.point().elevation()).size();
            findings.add(say.onePlace(first.shot(), second.shot(), apart));
        }
    }

    /** Two points of the list, the earlier first. */
    private record Pair(int first, int second) implements Comparable<Pair> {
        @Override
        public int compareTo(Pair other) {
            return first != other.first ? Integer.compare(first, other.first) : Integer.compare(second, other.second);
        }
    }

    private void profile(Profile profile, RunLine run) {
        List<ProfilePoint> points = profile.points();
        if (points.isEmpty()) {
            findings.add(say.unmeasured(run.id()));
            return;
        }
        if (points.size() == 1) findings.add(say.oneShot(run.id(), points.get(0).shot()));
        ends(profile, run);
        for (int i = 1; i < points.size(); i++) {
            Offset apart = points.get(i).station().minus(points.get(i - 1).station());
            if (apart.size().compareTo(GroundFindings.GAP) > 0)
                findings.add(say.gap(run.id(), points.get(i - 1), points.get(i)));
        }
        offTheirNeighbours(points);
        for (Profile.LowPoint low : profile.lowPoints()) findings.add(say.lowPoint(run.id(), low.at(), low.deep()));
    }

    private void ends(Profile profile, RunLine run) {
        Offset first = profile.points().get(0).station();
        Offset last = profile.points().get(profile.points().size() - 1).station();
        Offset end = run.line().length().asOffset();
        if (first.inches() > SILENT_IN)
            findings.add(say.extrapolated(run.id(), Offset.ZERO, first, profile.gradeAfter(Offset.ZERO)));
        if (end.inches() - last.inches() > SILENT_IN)
            findings.add(say.extrapolated(run.id(), last, end, profile.gradeAfter(end)));
    }

    /**
     * The worst first; those that were off beside it are looked at again without it, since one bad reading puts its neighbours off too. A shot
     * that lay well among all of them is never blamed, however far apart those that are left stand.
     */
    private void offTheirNeighbours(List<ProfilePoint> all) {
        List<ProfilePoint> points = new ArrayList<>(all);
        List<ProfilePoint> doubtful = List.of();
        for (int round = 0; ; round++) {
            List<ProfilePoint> still = new ArrayList<>();
            List<Length> by = new ArrayList<>();
            int worst = 0;
            for (int i = 1; i + 1 < points.size(); i++) {
                if (round > 0 && !doubtful.contains(points.get(i))) continue;
                Length off = offItsNeighbours(points.get(i - 1), points.get(i), points.get(i + 1));
                if (off.compareTo(GroundFindings.BLUNDER) <= 0) continue;
                still.add(points.get(i));
                by.add(off);
                if (off.compareTo(by.get(worst)) > 0) worst = by.size() - 1;
            }
            if (round == 0 && still.size() > MOST_BLUNDERS) {
                for (int i = 0; i < still.size(); i++)
                    findings.add(say.blunder(still.get(i).shot(), by.get(i)));
                return;
            }
            if (still.isEmpty()) return;
            findings.add(say.blunder(still.get(worst).shot(), by.get(worst)));
            points.remove(still.remove(worst));
            doubtful = still;
        }
    }

    private static Length offItsNeighbours(ProfilePoint before, ProfilePoint here, ProfilePoint after) {
        double share = (here.station().inches() - before.station().inches())
                / (after.station().inches() - before.station().inches());
        double onLine = before.elevation().inches()
                + share * (after.elevation().inches() - before.elevation().inches());
        return new Length(Math.abs(here.elevation().inches() - onLine));
    }

    /** Shots this little aside, for their distance, lie in one line. Judgement. */
    private static final double IN_LINE = 0.1;

    private record Off(GroundPoint point, Length by) {}

    /** A shot beside the lines against the surface of the shots round it: the worst first, the others again without it. */
    private void besideTheLines(List<GroundPoint> points) {
        List<GroundPoint> kept = new ArrayList<>(points);
        List<Off> doubtful = off(points, kept);
        for (int i = 0; i < MOST_BLUNDERS && !doubtful.isEmpty(); i++) {
            Off worst = doubtful.get(0);
            for (Off other : doubtful) if (other.by().compareTo(worst.by()) > 0) worst = other;
            findings.add(say.blunder(worst.point().shot(), worst.by()));
            kept.remove(worst.point());
            List<GroundPoint> rest = new ArrayList<>();
            for (Off other : doubtful) if (!other.equals(worst)) rest.add(other.point());
            doubtful = off(rest, kept);
        }
        for (Off other : doubtful) findings.add(say.blunder(other.point().shot(), other.by()));
    }

    /** Which of some points lie off the surface of those round them. */
    private static List<Off> off(List<GroundPoint> some, List<GroundPoint> all) {
        List<Off> off = new ArrayList<>();
        for (GroundPoint point : some) {
            if (!point.on().isEmpty()) continue;
            PlanPoint place = point.point().plan();
            List<GroundPoint> near = nearest(all, place);
            heightWithout(near, place).or(() -> alongLine(near, place)).ifPresent(expected -> {
                Length by = point.point().elevation().minus(expected).size();
                if (by.compareTo(GroundFindings.BLUNDER) > 0) off.add(new Off(point, by));
            });
        }
        return off;
    }

    /** Of shots in one line, which make no surface: the height half way, by distance, from the nearest before to the nearest behind. */
    private static Optional<Offset> alongLine(List<GroundPoint> near, PlanPoint place) {
        if (near.isEmpty()) return Optional.empty();
        double dx = near.get(0).point().plan().xIn() - place.xIn();
        double dy = near.get(0).point().plan().yIn() - place.yIn();
        double away = Math.sqrt(dx * dx + dy * dy);
        Optional<Offset> found = Optional.empty();
        for (GroundPoint other : near) {
            double ox = other.point().plan().xIn() - place.xIn();
            double oy = other.point().plan().yIn() - place.yIn();
            double along = (ox * dx + oy * dy) / away;
            double aside = Math.abs(ox * dy - oy * dx) / away;
            if (aside > IN_LINE * Math.abs(along)) return Optional.empty();
            if (along >= 0 || found.isPresent()) continue;
            double first = near.get(0).point().elevation().inches();
            double share = away / (away - along);
            found = Optional.of(new Offset(first + (other.point().elevation().inches() - first) * share));
        }
        return found;
    }

    /** The few points nearest to a place, itself left out, nearest first; of two as near the earlier. */
    private static List<GroundPoint> nearest(List<GroundPoint> points, PlanPoint place) {
        GroundPoint[] near = new GroundPoint[NEIGHBOURS];
        double[] away = new double[NEIGHBOURS];
        int held = 0;
        for (GroundPoint point : points) {
            double dx = point.point().plan().xIn() - place.xIn();
            double dy = point.point().plan().yIn() - place.yIn();
            double squared = dx * dx + dy * dy;
            if (squared < ONE_PLACE.inches() * ONE_PLACE.inches()) continue;
            if (held == NEIGHBOURS && squared >= away[held - 1]) continue;
            int at = held < NEIGHBOURS ? held++ : held - 1;
            while (at > 0 && away[at - 1] > squared) {
                away[at] = away[at - 1];
                near[at] = near[at - 1];
                at--;
            }
            away[at] = squared;
            near[at] = point;
        }
        List<GroundPoint> found = new ArrayList<>();
        for (int i = 0; i < held; i++) found.add(near[i]);
        return found;
    }

    private static Optional<Offset> heightWithout(List<GroundPoint> others, PlanPoint place) {
        List<PlanPoint> places = new ArrayList<>();
        List<Offset> heights = new ArrayList<>();
        for (GroundPoint other : others) {
            if (places.stream()
                    .anyMatch(known -> known.isSamePlace(other.point().plan()))) continue;
            places.add(other.point().plan());
            heights.add(other.point().elevation());
        }
        Triangulation triangles = Triangulation.of(places).withoutSlivers(Surface.ONE_PLACE);
        if (triangles.triangleAt(place).isEmpty()) return Optional.empty();
        return Optional.of(
                new Surface(triangles, heights, List.of()).heightAt(place).elevation());
    }
}
