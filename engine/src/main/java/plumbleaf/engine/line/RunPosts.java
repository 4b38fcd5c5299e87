package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Existing;
import plumbleaf.engine.job.FitPart;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.Plug;
import plumbleaf.engine.job.PrivateLine;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.SetPost;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.support.Support;

/**
 * Where the posts of one run stand: first those that have no choice (ends, corners, gate posts, posts of other runs that join here, posts staked out already),
 * then the best between each two of them.
 */
final class RunPosts {
    /** Clear ground between an old plug and a new hole. Common practice, no source. */
    private static final Length PLUG_CLEAR = Length.inches(1);

    /** A staked post this near to a fixed place is that post. */
    private static final double SAME_POST_IN = 0.5;

    private final Run run;
    private final PlanLine line;
    private final Profile profile;
    private final List<GatePlace> gates;
    private final Existing existing;
    private final PostSizes sizes;
    private final SpacingLimit spacing;
    private final List<Double> joinedAt;
    private final LineFindings say;
    private final KnownReach reach = new KnownReach(new RailAndWindReach());
    private final List<Finding> findings = new ArrayList<>();
    private boolean proven = true;

    /** @param joinedAt stations where other runs end on this one */
    RunPosts(
            Run run,
            RunLine line,
            Profile profile,
            List<GatePlace> gates,
            Existing existing,
            PostSizes sizes,
            SpacingLimit spacing,
            List<Double> joinedAt,
            LineFindings say) {
        this.run = run;
        this.line = line.line();
        this.profile = profile;
        this.gates = gates;
        this.existing = existing;
        this.sizes = sizes;
        this.spacing = spacing;
        this.joinedAt = joinedAt;
        this.say = say;
    }

    record Placed(List<Stop> stops, boolean proven, List<Finding> findings) {
        Placed {
            stops = List.copyOf(stops);
            findings = List.copyOf(findings);
        }
    }

    Placed place() {
        List<Stop> fixed = fixed();
        checkDigging(fixed);
        if (run.isLoneGate() || fixed.isEmpty()) return new Placed(fixed, true, findings);
        List<ClosedStretch> closed = DugParts.of(run).cut(closed(station -> holeIn(station) / 2));
        List<Stop> all = new ArrayList<>();
        for (int i = 0; i < fixed.size(); i++) {
            if (i > 0 && !isOpen(fixed.get(i - 1), fixed.get(i)))
                between(fixed.get(i - 1).stationIn(), fixed.get(i).stationIn(), closed, all);
            all.add(fixed.get(i));
        }
        for (Stop stop : all)
            if (stop.stands() && stop.setId().isEmpty()) findings.add(say.standsSomewhere(run.id(), stop));
        return new Placed(all, proven, findings);
    }

    static boolean spansGate(Stop from, Stop to) {
        boolean gates = from.role() == PostRole.GATE && to.role() == PostRole.GATE;
        return gates && !from.gate().isEmpty() && from.gate().equals(to.gate());
    }

    /** Whether nothing hangs between two neighbouring posts: across an opening, or where they stand against each other. */
    static boolean isOpen(Stop from, Stop to) {
        return spansGate(from, to) || to.stationIn() - from.stationIn() < (from.widthIn() + to.widthIn()) / 2;
    }

    private double holeIn(double stationIn) {
        return Math.max(
                sizes.holeAt(run, stationIn).inches(),
                sizes.postAt(run, stationIn).inches());
    }

    private Stop own(double stationIn, PostRole role) {
        Length width = role == PostRole.LINE ? sizes.postAt(run, stationIn) : sizes.terminalAt(run, stationIn);
        Support posts = run.postsAt(stationIn);
        double hole = DugParts.digs(posts) ? holeIn(stationIn) : 0;
        return new Stop(stationIn, role, "", width.inches(), hole, posts, "", "");
    }

    private List<Stop> fixed() {
        List<Stop> wanted = new ArrayList<>();
        if (!run.isLoneGate()) {
            double endIn = line.length().inches();
            wanted.add(run.isRing() ? own(0, PostRole.CORNER) : end(run.first(), 0, 1));
            for (int vertex = 1; vertex < line.legs(); vertex++)
                wanted.add(own(line.stationOfVertex(vertex).inches(), PostRole.atTurn(line.turnAt(vertex))));
            wanted.add(end(run.last(), endIn, -1));
            for (FitPart part : run.fits()) {
                if (part.from().inches() > 0) wanted.add(own(part.from().inches(), PostRole.LINE));
                if (part.to().inches() < endIn) wanted.add(own(part.to().inches(), PostRole.LINE));
            }
            for (double station : joinedAt) wanted.add(own(station, PostRole.CORNER));
        }
        for (GatePlace gate : gates) addPosts(gate, wanted);
        for (SetPost set : run.set()) pin(set, wanted);
        return oneAtEachPlace(wanted);
    }

    private Stop end(RunEnd end, double stationIn, int inwards) {
        return end.match(
                free -> own(stationIn, PostRole.END),
                wall -> new Stop(
                        stationIn + inwards * sizes.terminal(run).inches() / 2,
                        PostRole.WALL,
                        "",
                        sizes.terminal(run).inches(),
                        0,
                        Support.WallAnchor.usual(wall.of()),
                        "",
                        ""),
                joins -> new Stop(
                        stationIn, PostRole.CORNER, "", sizes.post(run).inches(), 0, run.posts(), "", joins.run()),
                theirs -> own(stationIn, PostRole.END));
    }

    private void addPosts(GatePlace gate, List<Stop> wanted) {
        double first = gate.first().width().inches();
        double second = gate.second().width().inches();
        double from = gate.station().inches() - first / 2;
        double to = gate.station().inches() + gate.opening().inches() + second / 2;
        wanted.add(gatePost(gate, from, gate.first()));
        wanted.add(gatePost(gate, to, gate.second()));
        boolean hingeFirst = gate.hingesOnFirst();
        addRollers(gate, hingeFirst ? from : to, hingeFirst ? first : second, hingeFirst ? -1 : 1, wanted);
        boolean onOneLeg = from >= -first
                && to <= line.length().inches() + second
                && line.legAt(new Offset(gate.station().inches()))
                        == line.legAt(new Offset(
                                gate.station().inches() + gate.opening().inches()));
        if (!onOneLeg) findings.add(say.gateOffLeg(gate.id(), run.id()));
    }

    /** The rear roller post of a slide gate, behind the front one, where it still stands on the gate's leg. A gate without a fence may have it beyond its line. */
    private void addRollers(GatePlace gate, double front, double width, int away, List<Stop> wanted) {
        if (gate.rear().isEmpty()) return;
        GatePlace.Rear rear = gate.rear().get();
        double at = front + away * rear.behind().inches();
        int leg = line.legAt(gate.station().asOffset());
        boolean onLeg = at >= line.stationOfVertex(leg).inches()
                && at <= line.stationOfVertex(leg + 1).inches();
        if (!onLeg && !run.isLoneGate()) return;
        double hole =
                DugParts.digs(rear.support()) ? Math.max(width, gate.hole().inches()) : 0;
        wanted.add(new Stop(at, PostRole.ROLLER, gate.id(), width, hole, rear.support(), "", ""));
    }

    private static Stop gatePost(GatePlace gate, double stationIn, GatePlace.On post) {
        double widthIn = post.width().inches();
        double hole =
                DugParts.digs(post.support()) ? Math.max(widthIn, gate.hole().inches()) : 0;
        return new Stop(
                stationIn,
                PostRole.GATE,
                gate.id(),
                widthIn,
                hole,
                post.support(),
                "",
                "",
                gate.left().inches());
    }

    private void pin(SetPost set, List<Stop> wanted) {
        double station = set.station().inches();
        for (int i = 0; i < wanted.size(); i++) {
            if (Math.abs(wanted.get(i).stationIn() - station) > SAME_POST_IN) continue;
            wanted.set(i, wanted.get(i).named(set.id()));
            return;
        }
        wanted.add(own(station, PostRole.LINE).named(set.id()));
    }

    private List<Stop> oneAtEachPlace(List<Stop> wanted) {
        List<Stop> sorted = new ArrayList<>(wanted);
        sorted.sort(Comparator.comparingDouble(Stop::stationIn).thenComparingInt(Stop::rank));
        List<Stop> kept = new ArrayList<>();
        for (Stop stop : sorted) {
            Stop before = kept.isEmpty() ? stop : kept.get(kept.size() - 1);
            double apart = stop.stationIn() - before.stationIn();
            boolean twoGates = stop.role() == PostRole.GATE && before.role() == PostRole.GATE;
            boolean clash = !kept.isEmpty() && apart < (stop.widthIn() + before.widthIn()) / 2 && !twoGates;
            if (!clash) {
                if (!kept.isEmpty() && apart < (stop.holeIn() + before.holeIn()) / 2 && before.digs() && stop.digs())
                    findings.add(say.holesMeet(run.id(), new Offset(before.stationIn()), new Length(apart)));
                kept.add(stop);
                continue;
            }
            Stop stays = stop.rank() < before.rank() ? stop : before;
            Stop goes = stays.equals(stop) ? before : stop;
            String name = stays.setId().isEmpty() ? goes.setId() : stays.setId();
            kept.set(kept.size() - 1, stays.named(name));
        }
        return kept;
    }

    /** @param radiusIn of the hole of a post that would stand at a station */
    private List<ClosedStretch> closed(DoubleUnaryOperator radiusIn) {
        List<ClosedStretch> closed = new ArrayList<>();
        for (NoDig noDig : run.noDig()) {
            double from = noDig.from().inches();
            double to = noDig.to().inches();
            closed.add(new ClosedStretch(
                    from - radiusIn.applyAsDouble(from), to + radiusIn.applyAsDouble(to), noDig.words(existing)));
        }
        for (Existing.Left left : existing.leftIn(run.id())) {
            Plug plug = left.plug();
            double radius = radiusIn.applyAsDouble(plug.station().inches());
            double away = plug.diameter().inches() / 2 + radius + PLUG_CLEAR.inches();
            closed.add(around(plug.station(), away, "an old post's concrete", List.of(left.pulled())));
        }
        for (PrivateLine buried : existing.lines()) {
            double radius = radiusIn.applyAsDouble(buried.station().inches());
            double away = buried.byHand().inches() + radius;
            if (buried.run().equals(run.id()))
                closed.add(around(buried.station(), away, "buried " + buried.kind(), List.of()));
        }
        return ClosedStretch.merged(closed);
    }

    private static ClosedStretch around(Length station, double awayIn, String why, List<String> pulled) {
        return new ClosedStretch(station.inches() - awayIn, station.inches() + awayIn, why, pulled);
    }

    private void checkDigging(List<Stop> fixed) {
        for (Stop stop : fixed) {
            if (!stop.digs()) continue;
            for (ClosedStretch stretch : closed(station -> stop.holeIn() / 2)) {
                if (stretch.holds(stop.stationIn()))
                    findings.add(say.fixedInNoDig(
                            stop.gate().isEmpty() ? run.id() : stop.gate(),
                            stop.role(),
                            new Offset(stop.stationIn()),
                            stretch));
            }
        }
    }

    private static final double ROUNDING_IN = 1e-6;

    /** A panel is not cut shorter than this: the eye takes it for a mistake. Judgement. */
    private static final double SLIVER_IN = 24;

    private void between(double from, double to, List<ClosedStretch> closed, List<Stop> all) {
        List<ClosedStretch> inside = closed.stream()
                .filter(stretch -> stretch.toIn() > from && stretch.fromIn() < to)
                .toList();
        PostSearch search = new PostSearch(from, to, inside, reach);
        search.solve()
                .match(
                        found -> {
                            proven = proven && found.proven();
                            List<Double> stations = wholePanels(found.stationsIn(), inside);
                            for (double station : stations.subList(1, stations.size() - 1))
                                all.add(own(station, PostRole.LINE));
                            return true;
                        },
                        stuck -> {
                            findings.add(say.noLayout(
                                    run.id(), stuck.at(), new Length(stuck.forcedIn()), new Length(stuck.allowedIn())));
                            over(from, to, stuck.at(), closed, all);
                            return false;
                        });
    }

    /**
     * Panel goods stand at their own length with what is left over cut once, in the last bay of the stretch: no more posts than equal bays take, none where nothing
     * may be dug, and no sliver of a panel. Where that cannot be, the bays stay equal. Common practice, no source. Check: EveryStyleTest.
     */
    private List<Double> wholePanels(List<Double> equal, List<ClosedStretch> closed) {
        if (sizes.panel(run).isEmpty() || equal.size() < 3) return equal;
        double from = equal.get(0);
        double to = equal.get(equal.size() - 1);
        double grade = profile.gradeBetween(new Offset(from), new Offset(to)).ratio();
        double bay = sizes.post(run).inches()
                + sizes.panel(run).get().inches()
                        / (Shaping.followsGrade(run.fit()) ? Math.sqrt(1 + grade * grade) : 1);
        List<Double> stations = new ArrayList<>(List.of(from));
        for (double at = from + bay; at < to - SLIVER_IN; at = stations.get(stations.size() - 1) + bay) {
            double most = reach.fromIn(stations.get(stations.size() - 1));
            double station = Math.min(at, most);
            boolean shut = closed.stream().anyMatch(stretch -> stretch.holds(station));
            if (shut || at > most + SAME_POST_IN) return equal;
            stations.add(station);
        }
        stations.add(to);
        double last = to - stations.get(stations.size() - 2);
        boolean reaches =
                to <= reach.fromIn(stations.get(stations.size() - 2)) + SAME_POST_IN && last <= bay + ROUNDING_IN;
        return reaches && stations.size() <= equal.size() ? stations : equal;
    }

    /** Goes on past a stretch that cannot be spanned, with a post at either edge, so that the rest is still laid out. */
    private void over(double from, double to, ClosedStretch stretch, List<ClosedStretch> closed, List<Stop> all) {
        if (stretch.fromIn() > from + SAME_POST_IN) {
            between(from, stretch.fromIn(), closed, all);
            all.add(own(stretch.fromIn(), PostRole.LINE));
        }
        if (stretch.toIn() < to - SAME_POST_IN) {
            all.add(own(stretch.toIn(), PostRole.LINE));
            between(stretch.toIn(), to, closed, all);
        }
    }

    /** What rails reach along the slope and strength allows in plan, and never less than the shortest bay that is built. */
    private final class RailAndWindReach implements BayReach {
        @Override
        public double fromIn(double fromIn) {
            double byStrength =
                    fromIn + spacing.longestFrom(run.id(), new Offset(fromIn)).inches();
            return Math.max(fromIn + SpacingLimit.SHORTEST.inches(), Math.min(bySlope(fromIn), byStrength));
        }

        @Override
        public boolean spans(double fromIn, double toIn) {
            if (toIn <= fromIn + SpacingLimit.SHORTEST.inches()) return true;
            return toIn <= bySlope(fromIn) && spacing.spans(run.id(), new Offset(fromIn), new Offset(toIn));
        }

        private double bySlope(double fromIn) {
            double reachIn = SlopeReach.stationIn(profile, fromIn, run.maxBay());
            // Just before a side a bay may still end where one from its beginning would, so that the next post never
            // comes nearer as a post moves on.
            for (RunSide side : run.sides()) {
                double firstIn = Math.max(fromIn, side.from().inches());
                if (!side.maxBay().isSaid() || fromIn >= side.to().inches() || firstIn >= reachIn) continue;
                reachIn = Math.min(
                        reachIn,
                        SlopeReach.stationIn(profile, firstIn, side.maxBay().or(run.maxBay())));
            }
            return reachIn;
        }
    }
}
