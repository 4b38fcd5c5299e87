package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Regrade;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Stain;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;

/** Everything of a job that is bought and built, in the order of the walk. */
public record Assembly(
        List<PostTake> posts,
        List<StyledBay> bays,
        List<WovenRun> woven,
        List<BuiltLeaf> leaves,
        List<PairTake> pairs,
        List<SlideTake> slides,
        List<Gate> gates,
        List<Regrade> regrades) {
    private static final double LOOSE_TO_COMPACTED = 1.2;

    /** On ground that is left as it is. */
    public Assembly(
            List<PostTake> posts,
            List<StyledBay> bays,
            List<WovenRun> woven,
            List<BuiltLeaf> leaves,
            List<PairTake> pairs,
            List<SlideTake> slides,
            List<Gate> gates) {
        this(posts, bays, woven, leaves, pairs, slides, gates, List.of());
    }

    public Assembly {
        regrades = List.copyOf(regrades);
        posts = List.copyOf(posts);
        bays = List.copyOf(bays);
        woven = List.copyOf(woven);
        leaves = List.copyOf(leaves);
        pairs = List.copyOf(pairs);
        slides = List.copyOf(slides);
        gates = List.copyOf(gates);
    }

    /** A bay and how it is made. */
    public record StyledBay(Bay bay, FenceStyle style, BayGoods goods) {
        /** The same with its wood stained. */
        public StyledBay with(Stain stain) {
            return new StyledBay(bay, style, goods.with(stain));
        }

        /** Gallons, and the square feet that a brush goes over. */
        public FinishNeeds.Coats coats() {
            return FinishNeeds.of(FenceNeeds.bay(this), goods.stain(), bay.id());
        }
    }

    /**
     * A run of chain link.
     *
     * @param height of the fabric
     * @param rail of its pipe rails; empty where it has none
     * @param line what its line posts are of
     * @param terminal what its own terminals are of; gate posts have their own size
     */
    public record WovenRun(
            RunLayout run,
            FenceInfill.Fabric fabric,
            Length height,
            Optional<Section> rail,
            boolean bottomWire,
            PostStock line,
            PostStock terminal) {
        Needs needs() {
            return FabricNeeds.of(this);
        }

        List<String> ownCaps() {
            return FabricNeeds.ownCaps(run, fabric, rail);
        }
    }

    /** A leaf and what it is made of. */
    public record BuiltLeaf(Leaf leaf, GateParts parts, Stain stain) {
        public BuiltLeaf(Leaf leaf, GateParts parts) {
            this(leaf, parts, Stain.NONE);
        }

        public FinishNeeds.Coats coats() {
            return FinishNeeds.of(GateNeeds.leaf(leaf, parts), stain, leaf.id());
        }
    }

    /** What all of it needs. */
    public Needs needs() {
        List<Need> loose = new ArrayList<>();
        List<BarNeed> bars = new ArrayList<>();
        List<String> ownCaps = new ArrayList<>();
        for (WovenRun run : woven) ownCaps.addAll(run.ownCaps());
        Set<String> capped = new LinkedHashSet<>(ownCaps);
        for (PostTake post : posts) add(FenceNeeds.post(post, !capped.contains(post.id())), loose, bars);
        for (StyledBay each : bays) {
            add(FenceNeeds.bay(each), loose, bars);
            loose.addAll(each.coats().needs());
        }
        for (WovenRun run : woven) add(run.needs(), loose, bars);
        for (BuiltLeaf each : leaves) {
            add(GateNeeds.leaf(each.leaf(), each.parts()), loose, bars);
            loose.addAll(each.coats().needs());
        }
        for (PairTake pair : pairs) add(pair.needs(), loose, bars);
        for (SlideTake slide : slides) add(slide.needs(), loose, bars);
        for (Gate gate : gates) {
            add(GateNeeds.holdOpen(gate), loose, bars);
            loose.addAll(HoldNeeds.hinges(gate));
            loose.addAll(HoldNeeds.closers(gate));
        }
        for (Regrade each : regrades) loose.addAll(fill(each));
        return new Needs(loose, bars);
    }

    /** Base for a landing, loose: what lies compacted takes 1.2 times its volume from the truck. Common practice, no source. */
    private static List<Need> fill(Regrade landing) {
        double loose = landing.fill().cubicFeet() * LOOSE_TO_COMPACTED;
        return loose == 0
                ? List.of()
                : List.of(new Need(
                        "landing-base",
                        "crushed base for a landing",
                        PartGroup.FOOTINGS,
                        NetUnit.CUBIC_FEET,
                        loose,
                        landing.part()));
    }

    private static void add(Needs needs, List<Need> loose, List<BarNeed> bars) {
        loose.addAll(needs.loose());
        bars.addAll(needs.bars());
    }

    /** Closers that a gate is fitted with: one a leaf that swings. */
    public static int closers(Gate gate) {
        if (!gate.hinges().closer()) return 0;
        return gate.kind().match(swing -> 1, pair -> 2, slide -> 0, flagged -> 0);
    }

    public int holes() {
        int sleeves = 0;
        for (PairTake pair : pairs) sleeves += pair.holes();
        return sleeves + (int) posts.stream().filter(PostTake::isDug).count();
    }

    /** Loose soil to get rid of: hole volume times its swell, 1.25 to 1.3 (common practice, no source). */
    public double spoilYards(double swell) {
        double ft3 = 0;
        for (PostTake post : posts) ft3 += post.holeFt3();
        for (PairTake pair : pairs) ft3 += pair.holesFt3();
        return ft3 * swell / 27;
    }
}
