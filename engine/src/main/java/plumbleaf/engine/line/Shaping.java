package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/** Fits the bays of a stretch of fence, from one gate or end to the next, to the ground under them. */
final class Shaping {
    /** What steps are whole multiples of where neither job nor style says: what a crew sets with a tape. Judgement. */
    static final Length STEP = Length.inches(1);

    /** A racked line may come this much nearer to the ground than the wanted gap: half of it stays. Judgement. */
    private static final double LEAST_SHARE_OF_GAP = 0.5;

    private final Run run;
    private final Profile profile;
    private final Length largestGap;
    private final Length step;
    private final LineFindings say;
    private final List<Finding> findings = new ArrayList<>();
    private Optional<FairTop> fairTop = Optional.empty();

    Shaping(Run run, Profile profile, Length largestGap, Length step, LineFindings say) {
        this.run = run;
        this.profile = profile;
        this.largestGap = largestGap;
        this.step = step;
        this.say = say;
    }

    List<Finding> findings() {
        return findings;
    }

    /**
     * The sharpest bend of a faired top.
     *
     * @param change of grade there, rise over run
     * @param atLeast no line within the gaps bends less at its sharpest
     * @param station of the post
     * @param least gap to the ground that was kept
     * @param most likewise
     */
    record FairTop(double change, double atLeast, Offset station, Length least, Length most) {}

    /** Over all faired stretches; none where there is none. */
    Optional<FairTop> fairTop() {
        return fairTop;
    }

    /** One shape for each pair of neighbouring stops; where the way of following the ground changes, a part of its own begins, with a step at its first post. */
    List<BayShape> shapes(List<Stop> stops) {
        List<BayShape> all = new ArrayList<>();
        int start = 0;
        for (int i = 1; i < stops.size(); i++) {
            boolean changes = i + 1 == stops.size() || fitFrom(stops, i) != fitFrom(stops, i - 1);
            if (!changes) continue;
            List<BayShape> part = new ArrayList<>(shapes(stops.subList(start, i + 1), fitFrom(stops, start)));
            if (start > 0) {
                BayShape first = part.get(0);
                double step = first.topFromIn() - all.get(all.size() - 1).topToIn();
                part.set(0, first.stepped(step));
                findings.add(say.fitChanges(
                        run.id(),
                        stops.get(start),
                        fitFrom(stops, start - 1),
                        fitFrom(stops, start),
                        new Offset(step)));
            }
            all.addAll(part);
            start = i;
        }
        return all;
    }

    private Fit fitFrom(List<Stop> stops, int bay) {
        return run.fitAt((stops.get(bay).stationIn() + stops.get(bay + 1).stationIn()) / 2);
    }

    private List<BayShape> shapes(List<Stop> stops, Fit fit) {
        return switch (fit) {
            case RACKED -> racked(stops);
            case STEPPED -> stepped(stops);
            case LEVEL_TOP -> levelTop(stops);
            case MIXED -> throw new IllegalStateException("A mixed fit is settled before its bays are shaped");
        };
    }

    private double ground(double stationIn) {
        return profile.elevationAt(new Offset(stationIn)).inches();
    }

    private List<ProfilePoint> between(Stop from, Stop to) {
        return profile.between(new Offset(from.stationIn()), new Offset(to.stationIn()));
    }

    private double highest(Stop from, Stop to) {
        double highest = Double.NEGATIVE_INFINITY;
        for (ProfilePoint point : between(from, to))
            highest = Math.max(highest, point.elevation().inches());
        return highest;
    }

    /** By how much the bottom of a stretch that follows the ground one way is too far off the ground, or in it, where that is most. */
    Length missed(List<Stop> stops, Fit fit) {
        double most = 0;
        List<BayShape> shapes = shapes(stops, fit);
        for (int i = 0; i < shapes.size(); i++) {
            double from = stops.get(i).stationIn();
            double length = stops.get(i + 1).stationIn() - from;
            BayShape bay = shapes.get(i);
            for (ProfilePoint point : between(stops.get(i), stops.get(i + 1))) {
                double share = (point.station().inches() - from) / length;
                double gap = bay.bottomFromIn()
                        + share * (bay.bottomToIn() - bay.bottomFromIn())
                        - point.elevation().inches();
                most = Math.max(most, Math.max(gap - largestGap.inches(), -gap));
            }
        }
        return Length.inches(most);
    }

    /** Whether a line with bends at the posts alone keeps the gap to the ground. */
    static boolean canBeFaired(Run run, Profile profile, Length largestGap, List<Stop> stops) {
        return new Shaping(run, profile, largestGap, STEP, new LineFindings(DisplayUnits.US))
                .faired(stops)
                .isPresent();
    }

    private Optional<Fairing.Faired> faired(List<Stop> stops) {
        List<Double> stations = stops.stream().map(Stop::stationIn).toList();
        List<Double> grounds = stations.stream().map(this::ground).toList();
        List<Boolean> smooth =
                stops.stream().map(stop -> stop.role() != PostRole.CORNER).toList();
        List<Fairing.Bend> bends = new ArrayList<>();
        for (int i = 0; i + 1 < stops.size(); i++) {
            double from = stations.get(i);
            double length = stations.get(i + 1) - from;
            List<ProfilePoint> points = between(stops.get(i), stops.get(i + 1));
            for (ProfilePoint point : points.subList(1, points.size() - 1))
                bends.add(new Fairing.Bend(
                        i,
                        (point.station().inches() - from) / length,
                        point.elevation().inches()));
        }
        double wanted = Math.min(run.bottomGap().inches(), largestGap.inches());
        return Fairing.of(new Fairing.Input(
                stations, grounds, smooth, bends, wanted * LEAST_SHARE_OF_GAP, largestGap.inches(), wanted));
    }

    private List<BayShape> racked(List<Stop> stops) {
        List<Double> stations = stops.stream().map(Stop::stationIn).toList();
        List<Double> grounds = stations.stream().map(this::ground).toList();
        double wanted = Math.min(run.bottomGap().inches(), largestGap.inches());
        Optional<Fairing.Faired> faired = faired(stops);
        if (faired.isEmpty()) {
            findings.add(say.noFairTop(
                    run.id(), new Offset(stations.get(0)), new Offset(stations.get(stations.size() - 1))));
        } else {
            keepSharper(faired.get(), stations, wanted);
        }
        List<BayShape> shapes = new ArrayList<>();
        double infill = run.infill().inches();
        for (int i = 0; i + 1 < stops.size(); i++) {
            double from = grounds.get(i) + gap(faired, i, wanted);
            double to = grounds.get(i + 1) + gap(faired, i + 1, wanted);
            shapes.add(new BayShape(from, to, from + infill, to + infill, 0, false));
        }
        return shapes;
    }

    private void keepSharper(Fairing.Faired faired, List<Double> stations, double wantedIn) {
        if (fairTop.isPresent() && fairTop.get().change() >= faired.largestChange()) return;
        fairTop = Optional.of(new FairTop(
                faired.largestChange(),
                faired.largestAtLeast(),
                new Offset(stations.get(faired.sharpest())),
                Length.inches(wantedIn * LEAST_SHARE_OF_GAP),
                largestGap));
    }

    private static double gap(Optional<Fairing.Faired> faired, int post, double wanted) {
        return faired.isPresent() ? faired.get().gapsIn().get(post) : wanted;
    }

    /** Each bay level, its bottom at least the wanted gap over the highest ground under it, in whole steps from the first bay. */
    private List<BayShape> stepped(List<Stop> stops) {
        List<BayShape> shapes = new ArrayList<>();
        double first = 0;
        double before = 0;
        for (int i = 0; i + 1 < stops.size(); i++) {
            double needed =
                    highest(stops.get(i), stops.get(i + 1)) + run.bottomGap().inches();
            if (i == 0) first = needed;
            double steps = Math.ceil((needed - first) / step.inches() - 1e-9);
            double bottom = first + steps * step.inches();
            double top = bottom + run.infill().inches();
            shapes.add(new BayShape(bottom, bottom, top, top, i == 0 ? 0 : top - before, false));
            before = top;
        }
        return shapes;
    }

    /** One level top over the whole stretch, the infill's own height at the highest ground; bottoms are cut to the ground. */
    private List<BayShape> levelTop(List<Stop> stops) {
        double highest = highest(stops.get(0), stops.get(stops.size() - 1));
        double gap = run.bottomGap().inches();
        double top = highest + gap + run.infill().inches();
        List<BayShape> shapes = new ArrayList<>();
        for (int i = 0; i + 1 < stops.size(); i++) {
            shapes.add(new BayShape(
                    ground(stops.get(i).stationIn()) + gap,
                    ground(stops.get(i + 1).stationIn()) + gap,
                    top,
                    top,
                    0,
                    true));
        }
        return shapes;
    }

    /** A grade as one; steeper than 19 to 1, where no fence is racked, counts as that. */
    static Slope slope(double ratio) {
        return new Slope(Math.max(-19, Math.min(19, ratio)));
    }

    /** Whether rails of this fit follow the grade. */
    static boolean followsGrade(Fit fit) {
        return fit == Fit.RACKED || fit == Fit.MIXED;
    }
}
