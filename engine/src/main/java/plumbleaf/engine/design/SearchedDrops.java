package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.LeafDrops;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.sag.PostGive;
import plumbleaf.engine.section.PostStock;

/** What comes after hanging of every build of a gate, in soft soil: each leaf solved once, each post once, each hole once. */
final class SearchedDrops {
    private final GateSite site;
    private final Map<LeafPick, List<LeafDrops>> leaves = new LinkedHashMap<>();
    private final Map<PostAt, PostGive> gives = new LinkedHashMap<>();
    private final Map<FootAt, Optional<PierSprings>> feet = new LinkedHashMap<>();

    /** A post under a leaf, the first or the second. */
    private record PostAt(int leaf, String section) {}

    /** Told apart by hand: a search asks tens of thousands of times. */
    private record FootAt(String post, String section, HoleSize hole) {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof FootAt foot
                    && post.equals(foot.post)
                    && section.equals(foot.section)
                    && hole.depth().inches() == foot.hole.depth().inches()
                    && hole.diameter().inches() == foot.hole.diameter().inches();
        }

        @Override
        public int hashCode() {
            return 31 * (31 * post.hashCode() + section.hashCode())
                    + Double.hashCode(
                            hole.depth().inches() + 1000 * hole.diameter().inches());
        }
    }

    /** A leaf's post in its hole, in soft soil. */
    private record StandingAt(int leaf, FootAt foot) {}

    private final Map<StandingAt, PostGive.Standing> standing = new LinkedHashMap<>();

    SearchedDrops(GateSite site) {
        this.site = site;
    }

    /** A leaf on a post in a foot. */
    private record On(LeafDrops leaf, PostGive post, PierSprings foot, StandingAt at) {}

    /** Empty where the gate does not hang, what holds it has no numbers, or its hinges are on a wall. */
    private List<On> all(TriedBuild tried, GatePlan plan) {
        List<On> all = new ArrayList<>();
        for (int i = 0; i < plan.hangs().size(); i++) {
            LeafHang hang = plan.hangs().get(i);
            Post post = GateWork.hingePost(site, plan, hang);
            boolean first = plan.hangs().size() == 1 || hang.leaf().hand().hinge() == Side.LEFT;
            PostStock stock = first ? tried.foot().hingePost() : tried.foot().latchPost();
            HoleSize hole = first
                    ? tried.foot().hole()
                    : GateFoot.secondHole(site, tried.foot().hole());
            Optional<PierSprings> springs = springs(post, stock, hole);
            if (springs.isEmpty()) return List.of();
            boolean onWall = springs.get().soft().match(pier -> false, planes -> false, wall -> true);
            if (onWall) return List.of();
            int leaf = i;
            List<LeafDrops> made =
                    leaves.computeIfAbsent(tried.leaf(), key -> GateWork.drops(site, tried.build(), plan));
            if (made.isEmpty()) return List.of();
            PostGive give = gives.computeIfAbsent(
                    new PostAt(i, stock.id()),
                    key -> PostGive.of(
                            GateWork.hungGates(site, tried.build(), plan).get(leaf)));
            StandingAt at = new StandingAt(i, new FootAt(post.id(), stock.id(), hole));
            all.add(new On(made.get(leaf), give, springs.get(), at));
        }
        return all;
    }

    /** Empty where the gate does not hang, or what holds it has no numbers. */
    Optional<Offset> after(TriedBuild tried, GatePlan plan) {
        List<On> all = all(tried, plan);
        if (all.isEmpty()) return GateWork.afterHangingSoft(site, tried.build(), plan);
        return all.stream()
                .map(on -> on.leaf().on(soft(on)).total())
                .reduce((one, other) -> other.compareTo(one) > 0 ? other : one);
    }

    private PostGive.Standing soft(On on) {
        return standing.computeIfAbsent(on.at(), key -> on.post().in(on.foot().soft()));
    }

    /** What the hinges carry of the closed leaves' weight, and of a person's with it, against what their maker says. */
    List<Finding> hinges(TriedBuild tried, GatePlan plan) {
        List<Finding> findings = new ArrayList<>();
        List<On> all = all(tried, plan);
        for (int i = 0; i < all.size(); i++) {
            On on = all.get(i);
            Leaf leaf = plan.hangs().get(i).leaf();
            List<CaseForces> cases = new ArrayList<>();
            for (Combination combination : List.of(Combination.D, Combination.D_L))
                cases.add(CaseForces.ofHinges(
                        combination,
                        on.leaf().hinges(on.post(), on.foot().likely(), combination.dead(), combination.live())));
            String part = all.size() == 1 ? site.gate().id() : leaf.id();
            findings.addAll(HingeChecks.findings(
                    part,
                    HingeChecks.uses(leaf, cases, on.leaf().hinge()),
                    on.leaf().hinge()));
        }
        return findings;
    }

    private Optional<PierSprings> springs(Post post, PostStock stock, HoleSize hole) {
        return feet.computeIfAbsent(
                new FootAt(post.id(), stock.id(), hole), key -> GateFoot.of(site, post, stock, hole));
    }
}
