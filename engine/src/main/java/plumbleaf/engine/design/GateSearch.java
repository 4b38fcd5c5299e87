package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import plumbleaf.engine.choose.Candidate;
import plumbleaf.engine.choose.Cheapest;
import plumbleaf.engine.choose.Parts;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.FootingDesign;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Work;
import plumbleaf.engine.labour.Works;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.takeoff.FenceNeeds;
import plumbleaf.engine.takeoff.GateNeeds;
import plumbleaf.engine.takeoff.Needs;
import plumbleaf.engine.takeoff.PostTake;
import plumbleaf.engine.takeoff.SlideTake;

/**
 * Prices and judges the builds of one gate. A build is refused at the first thing that is known to be wrong with it, cheapest question first: a depth that
 * was too little before, the drop, the leaf itself, the open leaf, and only then all of it. Whatever does not change from build to build is worked out once.
 */
final class GateSearch {
    /** Two holes that drop alike may differ by rounding. */
    private static final double NOISE_IN = 1e-9;

    private final GateSite site;
    private final PostWork posts;
    private final BuildPrice price;
    private final List<HoleSize> dug;
    private final SearchedDrops drops;
    private final LeafFirst first;
    private final GateLattice lattice;
    private final Optional<Hanging> hanging;
    private final SearchedSlides slides;
    private final Map<Hung, GatePlan> plans = new LinkedHashMap<>();
    private final Map<LeafPick, GatePlan> drawn = new LinkedHashMap<>();
    private final Map<Standing, Money> postPrices = new LinkedHashMap<>();
    private final Map<Dug, List<PostDesign>> tooShort = new LinkedHashMap<>();
    private final Map<LeafPick, Finding> weakLeaves = new LinkedHashMap<>();
    private final Map<LeafPick, Map<Feet, Double>> least = new LinkedHashMap<>();
    private final List<HoleSize> widest = new ArrayList<>();
    private final Map<Hung, BestFoot> bestFeet = new LinkedHashMap<>();
    private final Set<LeafPick> soundLeaves = new LinkedHashSet<>();

    /** A leaf between two posts. */
    private record Hung(LeafPick leaf, String hingePost, String latchPost) {
        static Hung of(TriedBuild tried) {
            return new Hung(
                    tried.leaf(),
                    tried.foot().hingePost().id(),
                    tried.foot().latchPost().id());
        }
    }

    /** A post in its hole. */
    private record Standing(String post, String section, HoleSize hole) {}

    /** All that tells how deep a gate's posts must stand: what a depth needs does not depend on the depth that is given. */
    private record Dug(Hung hung, Length diameter) {
        static Dug of(TriedBuild tried) {
            return new Dug(Hung.of(tried), tried.foot().hole().diameter());
        }
    }

    /** Two posts and how wide their holes are. Told apart by hand: a search asks a hundred thousand times. */
    private record Feet(String hingePost, String latchPost, double diameterIn) {
        static Feet of(FootPick foot, HoleSize hole) {
            return new Feet(
                    foot.hingePost().id(),
                    foot.latchPost().id(),
                    hole.diameter().inches());
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Feet feet
                    && diameterIn == feet.diameterIn
                    && hingePost.equals(feet.hingePost)
                    && latchPost.equals(feet.latchPost);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * hingePost.hashCode() + latchPost.hashCode()) + Double.hashCode(diameterIn);
        }
    }

    /**
     * @param dug kinds of holes that the job digs anyway
     * @param hanging where hinge or hinge side are looked for too: then what they do to swing and gaps counts
     */
    GateSearch(GateSite site, PriceBook book, PostWork posts, List<HoleSize> dug, Optional<Hanging> hanging) {
        this.site = site;
        this.posts = posts;
        this.price = new BuildPrice(book);
        this.dug = List.copyOf(dug);
        this.drops = new SearchedDrops(site);
        this.first = new LeafFirst(site, posts);
        this.lattice = new GateLattice(site, book);
        this.hanging = hanging;
        this.slides = new SearchedSlides(site);
    }

    Optional<Hanging> hanging() {
        return hanging;
    }

    /** How many builds there are. */
    int count() {
        return lattice.leaves().size() * lattice.feet().size();
    }

    /** The leaves and feet of every build of these searches. */
    static List<Parts<TriedBuild, FootPick>> parts(List<GateSearch> searches) {
        List<Parts<TriedBuild, FootPick>> parts = new ArrayList<>();
        for (GateSearch search : searches) parts.addAll(search.parts());
        return parts;
    }

    /** Leaves and feet with their prices: a leaf, and two posts with their footings; the opening is fixed between the posts, so the leaf is the same on any of them. */
    private List<Parts<TriedBuild, FootPick>> parts() {
        List<FootPick> all = lattice.feet();
        if (all.isEmpty()) return List.of();
        List<Candidate<FootPick>> feet = sorted(all, FootPick::id, this::price);
        List<Parts<TriedBuild, FootPick>> parts = new ArrayList<>();
        for (LeafPick leaf : lattice.leaves()) {
            TriedBuild tried = new TriedBuild(this, leaf, all.get(0));
            String id = hanging.map(is -> is.id() + " ").orElse("") + leaf.id();
            parts.add(new Parts<>(new Candidate<>(id, tried, price(tried)), feet));
        }
        return parts;
    }

    private static <P> List<Candidate<P>> sorted(List<P> all, Function<P, String> id, Function<P, Money> price) {
        List<Candidate<P>> sorted = new ArrayList<>();
        for (P each : all) sorted.add(new Candidate<>(id.apply(each), each, price.apply(each)));
        sorted.sort(Comparator.comparing((Candidate<P> each) -> each.price()).thenComparing(Candidate::id));
        return sorted;
    }

    private Money price(FootPick foot) {
        Money both = postPrice(site.first(), foot.hingePost(), foot.hole())
                .plus(postPrice(site.second(), foot.latchPost(), GateFoot.secondHole(site, foot.hole())));
        if (site.roller().isPresent()) both = both.plus(postPrice(site.roller().get(), foot.hingePost(), foot.hole()));
        return dug.isEmpty() || dug.contains(foot.hole()) ? both : both.plus(price.anotherKindOfHole());
    }

    private Money price(TriedBuild tried) {
        Needs needs = Needs.none();
        List<Work> works = new ArrayList<>();
        GateParts parts = GateWork.parts(site, tried.build());
        for (Leaf leaf : plan(tried).leaves()) {
            GateParts own = site.isRight(leaf.hand()) ? parts.turned() : parts;
            needs = needs.plus(GateNeeds.leaf(leaf, own));
            works.addAll(Works.leaf(leaf, own));
        }
        for (SlidePlan slide : plan(tried).slide().stream().toList()) {
            SlideTake take = new SlideTake(site.gate().id(), slide.rollers());
            needs = needs.plus(take.needs());
            works.addAll(Works.slide(take));
        }
        return price.of(needs, works);
    }

    private Money postPrice(Post post, PostStock section, HoleSize hole) {
        return postPrices.computeIfAbsent(new Standing(post.id(), section.id(), hole), key -> {
            Needs needs = Needs.none();
            List<Work> works = new ArrayList<>();
            for (PostTake take : PostTake.of(post, section, hole, StockWork.GRAVEL)) {
                needs = needs.plus(FenceNeeds.post(take));
                works.addAll(Works.post(take, site.job().site().soil()));
            }
            return price.of(needs, works);
        });
    }

    private GatePlan plan(TriedBuild tried) {
        return plans.computeIfAbsent(Hung.of(tried), key -> GateWork.judged(site, tried.build()));
    }

    /** What comes after hanging in soft soil, where the gate hangs; of a slide, how low its nose comes to the receiver. */
    Optional<Offset> after(TriedBuild tried) {
        if (isSlide()) return slideLow(tried);
        return drops.after(tried, drawn.computeIfAbsent(tried.leaf(), key -> plan(tried)));
    }

    /**
     * On which feet what comes after hanging may stay within a limit: those whose posts may in the widest and deepest hole of the lattice, and, where they do, in the
     * deepest as wide as their own. No build of those drops less, since a footing gives less the deeper and the wider it stands.
     * Check: LeafDropsTest, aWiderOrADeeperHoleNeverDropsMore; GateChoiceTest, lessDropHasItsPrice.
     */
    Predicate<FootPick> mayDropWithin(LeafPick leaf, double limitIn) {
        Map<Feet, Double> leasts = least.computeIfAbsent(leaf, key -> new LinkedHashMap<>());
        Map<Feet, Boolean> known = new LinkedHashMap<>();
        return foot -> known.computeIfAbsent(
                Feet.of(foot, foot.hole()),
                feet -> leastIn(leasts, leaf, foot, widest()) <= limitIn + NOISE_IN
                        && leastIn(leasts, leaf, foot, lattice.deepest(foot.hole())) <= limitIn + NOISE_IN);
    }

    private HoleSize widest() {
        if (widest.isEmpty()) widest.add(lattice.widestAndDeepest());
        return widest.get(0);
    }

    private double leastIn(Map<Feet, Double> leasts, LeafPick leaf, FootPick foot, HoleSize hole) {
        return leasts.computeIfAbsent(
                Feet.of(foot, hole),
                key -> new TriedBuild(this, leaf, new FootPick(foot.hingePost(), foot.latchPost(), hole)).afterIn());
    }

    private boolean isSlide() {
        return site.gate().kind().match(swing -> false, pair -> false, slide -> true, flagged -> false);
    }

    /** Of a slide, how low its nose comes to the receiver; not worked out where the build is known to fail. */
    private Optional<Offset> slideLow(TriedBuild tried) {
        if (plan(tried).slide().isEmpty()) return Optional.empty();
        if (isTooShort(tried).isPresent() || slideFails(tried, plan(tried)).isPresent()) return Optional.empty();
        return slides.low(tried, plan(tried));
    }

    private Optional<Finding> isTooShort(TriedBuild tried) {
        for (PostDesign known : tooShort.getOrDefault(Dug.of(tried), List.of())) {
            Optional<Finding> shallow = tooShallow(known, tried.foot().hole().depth());
            if (shallow.isPresent()) return shallow;
        }
        return Optional.empty();
    }

    /** The findings of the build's own parts: sag, hinges, frame, posts, footings. The swing is the ground's and the hand's, not the build's. */
    List<Finding> judge(TriedBuild tried) {
        Optional<Finding> shallow = isTooShort(tried);
        if (shallow.isPresent()) return List.of(shallow.get());
        if (isSlide()) return slide(tried, plan(tried));
        for (Finding finding : plan(tried).findings())
            if (finding.id().equals("hinge.grip") && !Cheapest.passes(List.of(finding))) return List.of(finding);
        Optional<Finding> drop = after(tried).flatMap(after -> GateWork.dropsTooFar(site, after));
        if (drop.isPresent()) return List.of(drop.get());
        List<Finding> hinges = drops.hinges(tried, plan(tried));
        if (!Cheapest.passes(hinges)) return List.of(Findings.join(hinges).get(0));
        Finding weak = weakLeaves.get(tried.leaf());
        if (weak != null) return List.of(weak);
        Optional<Finding> fails = failsFirst(tried);
        return fails.isPresent() ? List.of(fails.get()) : whole(tried);
    }

    /**
     * What is wrong with a slide even in the widest and deepest hole, looked at once for a leaf on its posts; then whether the hole's concrete holds it down: what lifts
     * does not depend on the hole.
     */
    private Optional<Finding> slideFails(TriedBuild tried, GatePlan plan) {
        BestFoot best = bestFeet.computeIfAbsent(Hung.of(tried), key -> bestFoot(tried, plan));
        if (best.fails().isPresent()) return best.fails();
        return best.slide().flatMap(slide -> slides.liftedOut(slide, tried.foot()));
    }

    private BestFoot bestFoot(TriedBuild tried, GatePlan plan) {
        FootPick foot = lattice.bestFoot(tried.foot());
        TriedBuild held = new TriedBuild(this, tried.leaf(), foot);
        GateDesign gate = GateWork.slideAtItsEnds(site, held.build(), plan);
        List<Finding> findings = slides.own(gate);
        if (gate.slide().isEmpty() || !Cheapest.passes(findings))
            return new BestFoot(Optional.of(Findings.join(findings).get(0)), gate.slide());
        GatePosts posed = GatePosts.of(site, gate, Stated.of(foot.hole().depth()), Length.ZERO, posts);
        findings.addAll(slides.own(posed.gate()));
        for (PostDesign post : posed.posts()) remembered(held, post);
        Optional<Finding> fails = Cheapest.passes(findings)
                ? Optional.empty()
                : Optional.of(Findings.join(findings).get(0));
        return new BestFoot(fails, gate.slide());
    }

    /** A slide leaf on its posts in the best hole there is. */
    private record BestFoot(Optional<Finding> fails, Optional<SlideDesign> slide) {}

    /** A slide: its rollers, leaf and nose first, then its three posts. */
    private List<Finding> slide(TriedBuild tried, GatePlan plan) {
        if (plan.slide().isEmpty())
            return List.of(Findings.join(plan.findings()).get(0));
        Optional<Finding> weak = slideFails(tried, plan);
        if (weak.isPresent()) return List.of(weak.get());
        GateDesign gate = slides.carried(tried, plan);
        List<Finding> findings = slides.own(gate);
        if (!Cheapest.passes(findings) || gate.slide().isEmpty()) return findings;
        GatePosts posed = GatePosts.of(site, gate, Stated.of(tried.foot().hole().depth()), Length.ZERO, posts);
        findings.addAll(slides.own(posed.gate()));
        for (PostDesign post : posed.posts()) {
            findings.addAll(post.findings());
            remembered(tried, post).ifPresent(findings::add);
        }
        return findings;
    }

    /** What the leaf shows to be wrong before all of the build is worked out. */
    private Optional<Finding> failsFirst(TriedBuild tried) {
        for (LeafFirst.Hung each : first.of(tried, plan(tried))) {
            Optional<Finding> weak = soundLeaves.contains(tried.leaf()) ? Optional.empty() : weakLeaf(tried, each);
            if (weak.isPresent()) {
                weakLeaves.put(tried.leaf(), weak.get());
                return weak;
            }
        }
        soundLeaves.add(tried.leaf());
        for (LeafFirst.Hung each : first.of(tried, plan(tried))) {
            Optional<Finding> fails = postFails(tried, each);
            if (fails.isPresent()) return fails;
        }
        for (LeafFirst.Hung each : first.closedPair(tried, plan(tried))) {
            List<Finding> frame = first.frame(each, tried.leaf().joint());
            if (!Cheapest.passes(frame)) return Optional.of(Findings.join(frame).get(0));
            Optional<Finding> fails = postFails(tried, each);
            if (fails.isPresent()) return fails;
        }
        return Optional.empty();
    }

    /** Its frame with its welds, then its hinges. */
    private Optional<Finding> weakLeaf(TriedBuild tried, LeafFirst.Hung hung) {
        for (List<Finding> own : List.of(first.frame(hung, tried.leaf().joint()), first.hinges(hung)))
            if (!Cheapest.passes(own)) return Optional.of(Findings.join(own).get(0));
        return Optional.empty();
    }

    private Optional<Finding> postFails(TriedBuild tried, LeafFirst.Hung each) {
        for (PostDesign post : first.posts(each, tried.build())) {
            Optional<Finding> shallow = remembered(tried, post);
            if (shallow.isPresent()) return shallow;
            if (!Cheapest.passes(post.findings()))
                return Optional.of(Findings.join(post.findings()).get(0));
        }
        return Optional.empty();
    }

    private List<Finding> whole(TriedBuild tried) {
        GateDesign gate = GateWork.designOn(site, tried.build(), plan(tried));
        if (gate.hung().isEmpty()) return List.of();
        GatePosts both = GatePosts.of(site, gate, Stated.of(tried.foot().hole().depth()), Length.ZERO, posts);
        List<Finding> findings = new ArrayList<>();
        for (Finding finding : both.gate().findings()) if (isOwn(finding)) findings.add(finding);
        findings.addAll(both.hinge().findings());
        findings.addAll(both.latch().findings());
        for (PostDesign post : List.of(both.hinge(), both.latch()))
            remembered(tried, post).ifPresent(findings::add);
        if (first.isDeterminate()) {
            List<Finding> ofLeaf = findings.stream()
                    .filter(finding -> finding.id().startsWith("leaf.") && !Cheapest.passes(List.of(finding)))
                    .toList();
            if (!ofLeaf.isEmpty())
                weakLeaves.put(tried.leaf(), Findings.join(ofLeaf).get(0));
        }
        return findings;
    }

    private boolean isOwn(Finding finding) {
        String id = finding.id();
        boolean hangs = id.startsWith("swing.") || (id.startsWith("gate.") && finding.severity() == Severity.MUST_FIX);
        return id.startsWith("sag.")
                || id.startsWith("hinge.")
                || id.startsWith("leaf.")
                || id.startsWith("post.")
                || (hanging.isPresent() && hangs);
    }

    private Optional<Finding> remembered(TriedBuild tried, PostDesign post) {
        Optional<Finding> shallow = tooShallow(post, tried.foot().hole().depth());
        if (shallow.isPresent())
            tooShort.computeIfAbsent(Dug.of(tried), key -> new ArrayList<>()).add(post);
        return shallow;
    }

    /** A depth is taken from all that governs it: a hole less deep than frost, load, drop and the least depth ask is no build, caution or not. */
    private Optional<Finding> tooShallow(PostDesign post, Length given) {
        if (post.hole().isZero() || post.footing().isEmpty()) return Optional.empty();
        FootingDesign footing = post.footing().get();
        if (footing.depthNeeded().compareTo(given) <= 0) return Optional.empty();
        return Optional.of(Checked.of(
                "footing.chosen-depth",
                Severity.MUST_FIX,
                post.footingId(),
                post.footingId() + ": " + site.job().display().length(footing.depthNeeded()) + " deep is needed",
                Basis.judgement("all that governs a depth"),
                Measure.provided(given.inches(), footing.depthNeeded().inches(), "in")));
    }
}
