package plumbleaf.engine.labour;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.BoardTop;
import plumbleaf.engine.catalogue.FenceTrim;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafTrim;
import plumbleaf.engine.gate.Regrade;
import plumbleaf.engine.gate.Weld;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.OldFence;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.support.Support;
import plumbleaf.engine.takeoff.Assembly;
import plumbleaf.engine.takeoff.FinishNeeds;
import plumbleaf.engine.takeoff.GateNeeds;
import plumbleaf.engine.takeoff.PairTake;
import plumbleaf.engine.takeoff.PostTake;
import plumbleaf.engine.takeoff.SlideTake;

/** What has to be done for each part. */
public final class Works {
    private Works() {}

    /** All that is done on the parts of a job; old fence and trips come beside. */
    public static List<Work> of(Assembly assembly, Soil soil) {
        List<Work> works = new ArrayList<>();
        for (PostTake post : assembly.posts()) works.addAll(post(post, soil));
        for (Assembly.StyledBay each : assembly.bays()) {
            works.addAll(bay(each));
            works.addAll(stain(each.coats(), each.bay().id()));
        }
        for (Assembly.BuiltLeaf each : assembly.leaves()) {
            works.addAll(leaf(each.leaf(), each.parts()));
            works.addAll(stain(each.coats(), each.leaf().id()));
        }
        for (PairTake pair : assembly.pairs()) works.addAll(pair(pair, soil));
        for (SlideTake slide : assembly.slides()) works.addAll(slide(slide));
        for (Gate gate : assembly.gates()) {
            works.addAll(wallHinges(gate));
            int closers = Assembly.closers(gate);
            if (closers > 0) works.add(Work.of("fit-closer", closers, gate.id()));
        }
        for (Regrade cut : assembly.regrades()) {
            if (cut.soil().cubicFeet() > 0)
                works.add(Work.of("shave-ground", cut.soil().cubicFeet(), cut.part()));
            if (cut.fill().cubicFeet() > 0)
                works.add(Work.of("fill-ground", cut.fill().cubicFeet(), cut.part()));
        }
        return works;
    }

    /** By the square foot, every coat. */
    private static List<Work> stain(FinishNeeds.Coats coats, String part) {
        return coats.brushedFt2() > 0 ? List.of(Work.of("stain", coats.brushedFt2(), part)) : List.of();
    }

    /** Bolt the rollers on, run the leaf in, set the receiver and both stops. */
    public static List<Work> slide(SlideTake slide) {
        return List.of(
                Work.of("fit-rollers", SlideTake.SETS, slide.gate()),
                Work.of("run-in-leaf", 1, slide.gate()),
                Work.of("fit-receiver", 1, slide.gate()),
                Work.of("fit-slide-stop", SlideTake.STOPS, slide.gate()));
    }

    /** Fit rods, dig and set sleeves, weld the stop strip on. */
    public static List<Work> pair(PairTake pair, Soil soil) {
        List<Work> works = new ArrayList<>();
        works.add(new Work(
                "dig",
                soil.kind().key(),
                pair.meeting().sleeveHole(),
                pair.dug().inFeet() * pair.holes(),
                pair.gate()));
        works.add(Work.of("set-sleeve", pair.sleeves(), pair.gate()));
        works.add(Work.of("fit-rod", pair.meeting().rods(), pair.gate()));
        if (!pair.stripLength().isZero()) works.add(Work.of("fit-strip", 1, pair.gate()));
        if (pair.meeting().hasStop()) works.add(Work.of("set-stop", 1, pair.gate()));
        return works;
    }

    /** Stake out, dig by the foot of hole, set, and cut to length. */
    public static List<Work> post(PostTake post, Soil soil) {
        List<Work> works = new ArrayList<>();
        if (post.isDug())
            works.add(new Work("dig", soil.kind().key(), post.hole(), post.dug().inFeet(), post.id()));
        works.add(Work.of("stake-out", 1, post.id()));
        works.add(Work.of(post.atGate() ? "set-gate-post" : "set-post", 1, post.id()));
        works.add(Work.of("cut-post", 1, post.id()));
        works.addAll(hold(post));
        return works;
    }

    /** What it takes beyond setting: a plate welded and anchored, a core drilled and grouted, a post driven, a bell cut, a sleeve set, a slab cut through. */
    private static List<Work> hold(PostTake post) {
        return post.support()
                .match(
                        footing -> footing(post, footing),
                        driven -> List.of(Work.of("drive-post", 1, post.id())),
                        plate -> List.of(Work.of("anchor-plate", 1, post.id())),
                        socket -> List.of(Work.of("core-drill", 1, post.id())),
                        wall -> List.of(),
                        existing -> List.of());
    }

    private static List<Work> footing(PostTake post, Support.NewFooting footing) {
        List<Work> works = new ArrayList<>();
        if (!footing.bell().isNone()) works.add(Work.of("bell-hole", 1, post.id()));
        if (footing.sleeve()) works.add(Work.of("frost-sleeve", 1, post.id()));
        if (footing.slabAtGrade()) works.add(Work.of("cut-slab", 1, post.id()));
        return works;
    }

    /** Hinges fixed to a wall, one by one. */
    private static List<Work> wallHinges(Gate gate) {
        return gate.hingePost()
                .support()
                .match(
                        footing -> List.of(),
                        driven -> List.of(),
                        plate -> List.of(),
                        socket -> List.of(),
                        wall -> List.of(Work.of("anchor-hinge", gate.hinges().count(), gate.id())),
                        existing -> List.of());
    }

    /** Rails and what fills the bay; the rails of a panel come with it. */
    public static List<Work> bay(Assembly.StyledBay styled) {
        Bay bay = styled.bay();
        List<Work> works = new ArrayList<>();
        FenceTrim trim = styled.style().trim();
        styled.style()
                .infill()
                .match(
                        up -> works.addAll(boards(bay, up.top())),
                        both -> works.addAll(boards(bay, both.top())),
                        lying -> works.add(Work.of("lying-board", lying(bay), bay.id())),
                        panel -> works.add(Work.of("set-panel", 1, bay.id())),
                        fabric -> works.addAll(List.of(
                                Work.of("pipe-rail", bay.rails().size(), bay.id()),
                                Work.of("fabric", bay.slopeLength().inFeet(), bay.id()))),
                        mesh -> works.addAll(List.of(
                                Work.of("cope-rail", bay.rails().size(), bay.id()), Work.of("mesh", 1, bay.id()))));
        works.add(Work.of("trim", bay.slopeLength().inFeet() * trim.boards(), bay.id()));
        return works;
    }

    /** Dog-eared boards are bought so; other tops are sawn in the shop. */
    private static List<Work> boards(Bay bay, BoardTop top) {
        boolean shaped = top != BoardTop.FLAT && top != BoardTop.DOG_EAR;
        return List.of(
                Work.of("rail", bay.rails().size(), bay.id()),
                Work.of("picket", bay.pickets().count(), bay.id()),
                Work.of("shape-top", shaped ? bay.pickets().count() : 0, bay.id()));
    }

    private static int lying(Bay bay) {
        return bay.fill()
                .match(open -> 0, pickets -> 0, lying -> lying.boards().size(), panel -> 0, fabric -> 0, mesh -> 0);
    }

    /** Cut, drill, fit, weld, clad and hang one leaf. */
    public static List<Work> leaf(Leaf leaf, GateParts parts) {
        List<Work> works = new ArrayList<>();
        int holes = leaf.members().stream()
                .mapToInt(member -> member.holes().size())
                .sum();
        double weldIn = 0;
        for (Weld weld : leaf.welds()) weldIn += weld.length().inches();
        works.add(Work.of("cut-tube", leaf.members().size(), leaf.id()));
        works.add(Work.of("fit-joint", leaf.joints().size(), leaf.id()));
        works.add(Work.of("weld", weldIn, leaf.id()));
        works.add(Work.of("drill", holes, leaf.id()));
        works.add(Work.of("nailer", leaf.nailers().size(), leaf.id()));
        double trimIn = 0;
        for (LeafTrim board : leaf.trim()) trimIn += board.length().inches();
        if (trimIn > 0) works.add(Work.of("trim", trimIn / 12, leaf.id()));
        boolean steel =
                parts.cladding().match(open -> false, wood -> false, pickets -> true, mesh -> false, sheet -> false);
        works.add(Work.of(steel ? "steel-picket" : "gate-picket", leaf.pickets().size(), leaf.id()));
        works.add(Work.of("panel", leaf.panels().size(), leaf.id()));
        works.add(Work.of("turnbuckle", count(leaf, "turnbuckle"), leaf.id()));
        works.add(Work.of("corner-bracket", count(leaf, "corner bracket"), leaf.id()));
        works.add(Work.of("hang-hinge", leaf.pins().size(), leaf.id()));
        if (!leaf.pins().isEmpty()) works.add(Work.of("hang-leaf", 1, leaf.id()));
        if (GateNeeds.hasLatch(leaf))
            works.add(Work.of("fit-latch", 1, parts.latch().id()));
        return works;
    }

    private static int count(Leaf leaf, String fitting) {
        return (int) leaf.fittings().stream()
                .filter(each -> each.what().equals(fitting))
                .count();
    }

    public static List<Work> tearOut(OldFence fence) {
        return List.of(Work.of("tear-out", fence.length().inFeet(), fence.kind()));
    }

    /** One travel and set-up a trip. */
    public static Work trips(int trips) {
        return Work.of("trip", trips, "job");
    }
}
