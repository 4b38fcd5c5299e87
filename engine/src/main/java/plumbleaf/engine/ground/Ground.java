package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.SpacePoint;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * The ground as it was measured, worked out: every shot a point, every run its profile, and what has to be said about the book.
 *
 * @param points in the order of their ids
 * @param profiles one for each run, in the order of the runs
 * @param profileLines for each run the ground along it in space: its shots, its corners, and its ends where the last grades were carried on to
 * @param breaks the pieces of the break lines
 * @param display units that its findings tell lengths in
 */
public record Ground(
        List<GroundPoint> points,
        List<Profile> profiles,
        Map<String, List<SpacePoint>> profileLines,
        List<BreakEdge> breaks,
        List<LaterGround> later,
        List<Finding> findings,
        DisplayUnits display) {
    public Ground {
        points = List.copyOf(points);
        profiles = List.copyOf(profiles);
        profileLines = Collections.unmodifiableMap(new LinkedHashMap<>(profileLines));
        breaks = List.copyOf(breaks);
        later = List.copyOf(later);
        findings = List.copyOf(findings);
    }

    public static Ground of(GroundBook book, List<RunLine> runs) {
        return of(book, Levelled.of(book), runs, DisplayUnits.US);
    }

    /** With heights that are worked out already, as where legs taped along the ground were reduced with them. */
    public static Ground of(GroundBook book, Levelled levelled, List<RunLine> runs, DisplayUnits display) {
        GroundFindings say = new GroundFindings(display);
        List<Finding> findings = new ArrayList<>(levelled.findings());
        Placing placing = new Placing(levelled, runs, say);
        List<GroundPoint> points = placing.all();
        findings.addAll(placing.findings());
        points.sort(Comparator.comparing(GroundPoint::shot, ShotOrder.BY_ID));
        List<Profile> profiles = new ArrayList<>();
        Map<String, List<SpacePoint>> profileLines = new LinkedHashMap<>();
        Map<String, SpacePoint> shots = new TreeMap<>();
        for (GroundPoint point : points) shots.put(point.shot(), point.point());
        for (RunLine run : runs) {
            Profile profile = profileOf(run.id(), points);
            profiles.add(profile);
            profileLines.put(run.id(), lineOf(profile, run, shots));
        }
        List<BreakEdge> breaks = breaks(book, points, say, findings);
        findings.addAll(GroundReview.of(points, profiles, runs, say));
        return new Ground(points, profiles, profileLines, breaks, book.later(), findings, display);
    }

    public Profile profile(String run) {
        return profiles.stream()
                .filter(profile -> profile.run().equals(run))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No run " + run + " on this ground"));
    }

    public Optional<GroundPoint> point(String shot) {
        return points.stream().filter(point -> point.shot().equals(shot)).findFirst();
    }

    /**
     * The surface a leaf swings over: constrained Delaunay triangles of the shots within reach of the pin axis, with the run's profile and the break
     * lines as edges. With fewer than three shots off one line: the run's own ground, tilted across by the cross slope, and a finding.
     *
     * @param reach twice the leaf's greatest r
     * @param crossSlope rise over run towards the inside, + up, where nothing was shot beside the line
     */
    public Surface surfaceNear(PlanPoint pin, Length reach, RunLine run, Slope crossSlope) {
        return new SurfaceMaking(this, pin, reach).around(run, crossSlope);
    }

    /** The most that the ground of a stretch will rise later. */
    public Length laterRise(String run, Offset from, Offset to) {
        Length most = Length.ZERO;
        for (LaterGround rise : later) {
            boolean touches = rise.run().equals(run)
                    && rise.from().asOffset().compareTo(to) <= 0
                    && rise.to().asOffset().compareTo(from) >= 0;
            if (touches && rise.rise().compareTo(most) > 0) most = rise.rise();
        }
        return most;
    }

    /** The ground along a run in space; empty where nothing was measured on it. */
    List<SpacePoint> lineOf(String run) {
        return profileLines.getOrDefault(run, List.of());
    }

    private static List<SpacePoint> lineOf(Profile profile, RunLine run, Map<String, SpacePoint> shots) {
        if (profile.points().isEmpty()) return List.of();
        TreeMap<Offset, SpacePoint> line = new TreeMap<>();
        for (int vertex = 0; vertex <= run.line().legs(); vertex++) {
            Offset station = run.line().stationOfVertex(vertex).asOffset();
            line.put(station, run.line().vertex(vertex).at(profile.elevationAt(station)));
        }
        for (ProfilePoint point : profile.points()) {
            SpacePoint shot = shots.get(point.shot());
            if (shot != null) line.put(point.station(), shot);
        }
        return List.copyOf(line.values());
    }

    private static Profile profileOf(String run, List<GroundPoint> points) {
        List<ProfilePoint> on = new ArrayList<>();
        for (GroundPoint point : points) {
            for (GroundPoint.OnRun place : point.on()) {
                if (place.run().equals(run))
                    on.add(new ProfilePoint(
                            point.shot(), place.station(), point.point().elevation()));
            }
        }
        return Profile.of(run, on);
    }

    private static List<BreakEdge> breaks(
            GroundBook book, List<GroundPoint> points, GroundFindings say, List<Finding> findings) {
        List<BreakEdge> edges = new ArrayList<>();
        for (Breakline line : book.breaklines()) {
            Optional<GroundPoint> last = Optional.empty();
            for (String shot : line.shots()) {
                Optional<GroundPoint> here = points.stream()
                        .filter(point -> point.shot().equals(shot))
                        .findFirst();
                if (here.isEmpty()) findings.add(say.unknownInBreakline(line.what(), shot));
                if (here.isPresent() && last.isPresent())
                    edges.add(new BreakEdge(last.get().point(), here.get().point()));
                last = here;
            }
        }
        return edges;
    }
}
