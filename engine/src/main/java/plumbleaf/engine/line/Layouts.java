package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.Foot;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.HeightRule;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Keeping;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.job.MeasuredFrom;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/** Lays out every run of a job: where its posts stand, then what hangs between them. */
public final class Layouts {
    /** A run that ends further than this from the one it joins does not reach it. */
    private static final Length JOIN = Length.inches(6);

    /** Shots this near say how high the ground is under a post off the line. Judgement: a leaf's width and more. */
    private static final Length SET_BACK_REACH = Length.feet(8);

    private final Job job;
    private final Catalogue catalogue;
    private final Ground ground;
    private final List<RunLine> lines;
    private final List<GatePlace> gates;
    private final PostSizes sizes;
    private final SpacingLimit spacing;
    private final LineFindings say;
    private final List<Finding> findings = new ArrayList<>();

    private Layouts(
            Job job,
            Catalogue catalogue,
            Ground ground,
            List<RunLine> lines,
            List<GatePlace> gates,
            PostSizes sizes,
            SpacingLimit spacing) {
        this.job = job;
        this.catalogue = catalogue;
        this.ground = ground;
        this.lines = lines;
        this.gates = gates;
        this.sizes = sizes;
        this.spacing = spacing;
        this.say = new LineFindings(job.display());
    }

    /**
     * @param lines of the job's runs, in their order: {@link RunLines#of}
     * @param ground worked out with the same lines
     * @param gates what there is of each gate for a line to know; the job's own gates are not looked at
     */
    public static Layout of(
            Job job,
            Catalogue catalogue,
            Ground ground,
            List<RunLine> lines,
            List<GatePlace> gates,
            PostSizes sizes,
            SpacingLimit spacing) {
        return RailReach.settled(
                job, spacing, limit -> new Layouts(job, catalogue, ground, lines, gates, sizes, limit).layout());
    }

    private Layout layout() {
        List<RunPosts.Placed> placed = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Run run = job.runs().get(i);
            RunPosts.Placed posts = new RunPosts(
                            run,
                            lines.get(i),
                            ground.profile(run.id()),
                            gatesOf(run),
                            job.existing(),
                            sizes,
                            spacing,
                            joinedAt(run, lines.get(i)),
                            say)
                    .place();
            findings.addAll(posts.findings());
            placed.add(posts);
        }
        PostNames names = new PostNames(job.runs().stream()
                .flatMap(run -> run.set().stream())
                .map(set -> set.id())
                .toList());
        List<List<String>> own = new ArrayList<>();
        for (RunPosts.Placed run : placed) own.add(names.of(run.stops()));
        List<RunLayout> runs = new ArrayList<>();
        int bays = 0;
        for (int i = 0; i < lines.size(); i++) {
            List<String> all = withJoined(i, placed, own);
            RunLayout made = lay(job.runs().get(i), lines.get(i), placed.get(i), all, bays + 1);
            bays += made.bays().size();
            runs.add(made);
        }
        return new Layout(runs, findings);
    }

    private List<GatePlace> gatesOf(Run run) {
        return gates.stream().filter(gate -> gate.run().equals(run.id())).toList();
    }

    /** Stations of a run at which the ends of other runs need a post. */
    private List<Double> joinedAt(Run run, RunLine line) {
        List<Double> stations = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Run other = job.runs().get(i);
            if (other.equals(run)) continue;
            PlanLine theirs = lines.get(i).line();
            if (joins(other.first(), run)) stations.add(joint(other, run, line, theirs.vertex(0)));
            if (joins(other.last(), run)) stations.add(joint(other, run, line, theirs.vertex(theirs.legs())));
        }
        return stations;
    }

    private static boolean joins(RunEnd end, Run run) {
        return end.match(free -> false, wall -> false, joined -> joined.run().equals(run.id()), theirs -> false);
    }

    private double joint(Run other, Run run, RunLine line, PlanPoint at) {
        Foot foot = line.line().footOf(at);
        if (foot.distance().compareTo(JOIN) > 0) findings.add(say.joinMissed(other.id(), run.id(), foot.distance()));
        return foot.station().inches();
    }

    /** The names of a run's posts, with those of the runs it joins at its ends. */
    private List<String> withJoined(int index, List<RunPosts.Placed> placed, List<List<String>> own) {
        List<String> names = new ArrayList<>(own.get(index));
        List<Stop> stops = placed.get(index).stops();
        for (int i = 0; i < names.size(); i++) {
            if (stops.get(i).joins().isEmpty()) continue;
            PlanPoint at =
                    lines.get(index).line().pointAt(new Offset(stops.get(i).stationIn()));
            names.set(i, nearest(stops.get(i).joins(), at, placed, own));
        }
        return names;
    }

    private String nearest(String run, PlanPoint at, List<RunPosts.Placed> placed, List<List<String>> own) {
        String best = "";
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).id().equals(run)) continue;
            List<Stop> stops = placed.get(i).stops();
            for (int j = 0; j < stops.size(); j++) {
                double away = lines.get(i)
                        .line()
                        .pointAt(new Offset(stops.get(j).stationIn()))
                        .distanceTo(at)
                        .inches();
                if (away < least && !own.get(i).get(j).isEmpty()) {
                    least = away;
                    best = own.get(i).get(j);
                }
            }
        }
        return best;
    }

    private RunLayout lay(Run asked, RunLine line, RunPosts.Placed placed, List<String> names, int firstBay) {
        Profile profile = ground.profile(asked.id());
        List<Stop> stops = placed.stops();
        Optional<FenceStyle> style = catalogue.style(asked.style());
        if (style.isEmpty() && !asked.isLoneGate()) findings.add(say.unknownStyle(asked.id(), asked.style()));
        Optional<WoodSpecies> species =
                style.flatMap(FenceStyle::boarding).flatMap(boards -> catalogue.species(boards.species()));
        RailRows rails = style.map(made -> RailRows.of(made, catalogue, asked.infill()))
                .orElse(new RailRows(Length.ZERO, List.of()));
        Optional<BayFilling> filling =
                style.map(made -> new BayFilling(made, catalogue, asked.infill(), Seasons.USUAL));
        MeasuredFrom from = job.rules().heights().isEmpty()
                ? MeasuredFrom.LOWER_SIDE
                : job.rules().heights().get(0).from();
        Length largestGap = job.rules().gapUnder(asked.id()).largest();
        Length step = StepSize.of(asked, style);
        MixedFits mixed = new MixedFits(asked, profile, style, largestGap, step, say);
        Run run = mixed.settled(stops);
        findings.addAll(mixed.findings());
        Shaping shaping = new Shaping(run, profile, largestGap, step, say);
        BesideGround beside = new BesideGround(ground, line);
        BayMaking making = new BayMaking(
                run, line.line(), profile, style, rails, filling, species, Seasons.USUAL, beside, from, say);
        List<Bay> bays = new ArrayList<>();
        Map<Integer, Double> tops = new TreeMap<>();
        int start = 0;
        for (int i = 1; i <= stops.size() && !run.isLoneGate(); i++) {
            boolean cut = i == stops.size() || RunPosts.isOpen(stops.get(i - 1), stops.get(i));
            if (!cut) continue;
            if (i - start >= 2) {
                List<Stop> stretch = stops.subList(start, i);
                List<BayShape> shapes = shaping.shapes(stretch);
                bays.addAll(making.bays(stretch, shapes, names.subList(start, i), firstBay + bays.size()));
                for (int j = 0; j < shapes.size(); j++) {
                    tops.merge(start + j, shapes.get(j).topFromIn(), Math::max);
                    tops.merge(start + j + 1, shapes.get(j).topToIn(), Math::max);
                }
            }
            start = i;
        }
        for (Leg leg : run.legs()) {
            leg.chord()
                    .value()
                    .filter(chord -> chord.index() == 0)
                    .ifPresent(chord -> findings.add(say.curve(run.id(), chord.arc(), chord.count(), leg.length())));
        }
        findings.addAll(shaping.findings());
        findings.addAll(making.findings());
        check(run, bays, shaping);
        say.steps(run.id(), bays, step, StepSize.words(run, style)).ifPresent(findings::add);
        checkHeights(run, bays, beside);
        findings.addAll(TapedCorners.of(run, line.line(), say));
        findings.addAll(TapedLegs.of(run, line.line(), profile, say));
        findings.addAll(TieIns.of(run, bays, profile, say));
        return new RunLayout(
                run.id(), line, posts(run, line, profile, stops, names, tops), bays, placed.proven(), style);
    }

    /** How much of the longest that is allowed where it begins a bay takes. */
    private static double useOf(Run run, Bay bay) {
        return bay.slopeLength().inches() / run.maxBayAt(bay.start().inches()).inches();
    }

    private void check(Run run, List<Bay> bays, Shaping shaping) {
        if (bays.isEmpty()) return;
        Bay longest = bays.get(0);
        Bay widestGap = bays.get(0);
        for (Bay bay : bays) {
            if (useOf(run, bay) > useOf(run, longest)) longest = bay;
            if (bay.groundGapMax().compareTo(widestGap.groundGapMax()) > 0) widestGap = bay;
            if (bay.groundGapMin().inches() < -Fairing.GAP_ROUNDING_IN) findings.add(say.digsIn(bay));
        }
        findings.add(
                say.longestBay(run.id(), longest, run.maxBayAt(longest.start().inches())));
        findings.add(say.gap(widestGap, job.rules().gap()));
        for (Keeping keeping : job.rules().keeps())
            if (keeping.holds(run.id())) findings.add(say.keeps(widestGap, keeping));
        shaping.fairTop().ifPresent(top -> findings.add(say.fairTop(run.id(), top)));
        for (Bay bay : bays) {
            if (bay.pickets().gap().inches() >= 0 && bay.pickets().gapWettest().inches() < 0) {
                findings.add(say.pressing(run.id(), bay.pickets()));
                break;
            }
        }
    }

    /** Each height rule over the whole run, from the side it names. */
    private void checkHeights(Run run, List<Bay> bays, BesideGround beside) {
        boolean known = true;
        for (HeightRule rule : job.rules().heights()) {
            Optional<Bay> highest = Optional.empty();
            double most = Double.NEGATIVE_INFINITY;
            for (Bay bay : bays) {
                BesideGround.Height height = beside.of(
                        rule.from(),
                        bay.start().inches(),
                        bay.end().inches(),
                        bay.topFrom().inches(),
                        bay.topTo().inches());
                known = known && height.known();
                if (height.mostIn() > most) {
                    most = height.mostIn();
                    highest = Optional.of(bay);
                }
            }
            double reached = most;
            highest.ifPresent(bay -> findings.add(say.height(bay, new Offset(reached), rule)));
        }
        if (!known && !bays.isEmpty()) findings.add(say.sideUnknown(run.id()));
    }

    private List<Post> posts(
            Run run, RunLine line, Profile profile, List<Stop> stops, List<String> names, Map<Integer, Double> tops) {
        Map<String, GatePlace> places = new LinkedHashMap<>();
        for (GatePlace gate : gates) places.put(gate.id(), gate);
        List<Post> posts = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            if (!stop.joins().isEmpty()) continue;
            Offset station = new Offset(stop.stationIn());
            Offset left = new Offset(stop.leftIn());
            Offset grade = left.isZero()
                    ? profile.elevationAt(station)
                    : ground.surfaceNear(
                                    line.line().pointAt(station, left),
                                    SET_BACK_REACH,
                                    line,
                                    run.crossSlope().value().orElse(Slope.ZERO))
                            .heightAt(line.line().pointAt(station, left))
                            .elevation();
            double top = tops.getOrDefault(i, grade.inches());
            GatePlace gate = places.get(stop.gate());
            if (gate != null)
                top = Math.max(
                        top,
                        leafStandsOn(gate, profile, grade).inches()
                                + gate.bottomGap().inches()
                                + gate.infill().inches());
            posts.add(new Post(
                    names.get(i),
                    run.id(),
                    stop.gate(),
                    station,
                    left.isZero() ? line.line().pointAt(station) : line.line().pointAt(station, left),
                    facing(run, line.line(), stop),
                    stop.role(),
                    stop.support(),
                    new Length(stop.widthIn()),
                    new Length(stop.holeIn()),
                    grade,
                    new Offset(top)));
        }
        return posts;
    }

    /** The grade that a gate's leaf is set out from at a post: its own there; of a slide leaf, which is level, that at the opening's face it slides past. */
    private static Offset leafStandsOn(GatePlace gate, Profile profile, Offset here) {
        return gate.slidesFrom().map(profile::elevationAt).orElse(here);
    }

    private static Direction facing(Run run, PlanLine line, Stop stop) {
        if (run.isRing() && stop.stationIn() == 0)
            return line.directions()
                    .get(line.legs() - 1)
                    .halfWayTo(line.directions().get(0));
        for (int vertex = 1; vertex < line.legs(); vertex++) {
            if (Math.abs(line.stationOfVertex(vertex).inches() - stop.stationIn()) < 1e-6)
                return line.directions()
                        .get(vertex - 1)
                        .halfWayTo(line.directions().get(vertex));
        }
        return line.directionAt(new Offset(stop.stationIn()));
    }
}
