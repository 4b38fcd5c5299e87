package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.FootingDesign;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Work;
import plumbleaf.engine.labour.Works;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.takeoff.FenceNeeds;
import plumbleaf.engine.takeoff.GateNeeds;
import plumbleaf.engine.takeoff.Needs;
import plumbleaf.engine.takeoff.PostTake;

/** Prices and judges the builds of one gate. Leaves are drawn once for each frame and post; a build that drops too far is not looked at further. */
final class GateSearch {
    private final GateSite site;
    private final PostWork posts;
    private final BuildPrice price;
    private final List<HoleSize> dug;
    private final Map<Hung, GatePlan> plans = new LinkedHashMap<>();
    private final Map<Made, Money> leafPrices = new LinkedHashMap<>();
    private final Map<Standing, Money> postPrices = new LinkedHashMap<>();
    private final Map<Dug, List<PostDesign>> tooShort = new LinkedHashMap<>();

    /** All that tells one leaf from another. */
    private record Made(String frame, String bracing, Joint joint) {
        static Made of(PickedGate build) {
            return new Made(build.frame().id(), build.bracing().mark(), build.joint());
        }
    }

    /** A leaf between two posts. */
    private record Hung(Made leaf, String hingePost, String latchPost) {
        static Hung of(PickedGate build) {
            return new Hung(
                    Made.of(build), build.hingePost().id(), build.latchPost().id());
        }
    }

    /** A post in its hole. */
    private record Standing(String post, String section, HoleSize hole) {}

    /** All that tells how deep a gate's posts must stand: what a depth needs does not depend on the depth that is given. */
    private record Dug(Hung hung, Length diameter) {
        static Dug of(PickedGate build) {
            return new Dug(Hung.of(build), build.hole().diameter());
        }
    }

    /** @param dug kinds of holes that the job digs anyway */
    GateSearch(GateSite site, PriceBook book, PostWork posts, List<HoleSize> dug) {
        this.site = site;
        this.posts = posts;
        this.price = new BuildPrice(book);
        this.dug = List.copyOf(dug);
    }

    private GatePlan plan(PickedGate build) {
        return plans.computeIfAbsent(Hung.of(build), key -> GateWork.judged(site, build));
    }

    /** A leaf and two posts with their footings; the opening is fixed between the posts, so the leaf is the same on any of them. */
    Money price(PickedGate build) {
        Money leaf = leafPrices.computeIfAbsent(Made.of(build), key -> leafPrice(build));
        Money both = leaf.plus(postPrice(site.first(), build.hingePost(), build.hole()))
                .plus(postPrice(site.second(), build.latchPost(), build.hole()));
        return dug.isEmpty() || dug.contains(build.hole()) ? both : both.plus(price.anotherKindOfHole());
    }

    private Money leafPrice(PickedGate build) {
        Needs needs = Needs.none();
        List<Work> works = new ArrayList<>();
        GateParts parts = GateWork.parts(site, build);
        for (Leaf leaf : plan(build).leaves()) {
            needs = needs.plus(GateNeeds.leaf(leaf, parts));
            works.addAll(Works.leaf(leaf, parts));
        }
        return price.of(needs, works);
    }

    private Money postPrice(Post post, Section section, HoleSize hole) {
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

    /** The findings of the build's own parts: sag, hinges, frame, posts, footings. The swing is the ground's and the hand's, not the build's. */
    List<Finding> judge(PickedGate build) {
        for (PostDesign known : tooShort.getOrDefault(Dug.of(build), List.of())) {
            Optional<Finding> shallow = tooShallow(known, build.hole().depth());
            if (shallow.isPresent()) return List.of(shallow.get());
        }
        Optional<Finding> drops = GateWork.dropsTooFar(site, build, plan(build));
        if (drops.isPresent()) return List.of(drops.get());
        GateDesign gate = GateWork.designOn(site, build, plan(build));
        if (gate.hung().isEmpty()) return List.of();
        GatePosts both = GatePosts.of(site, gate, Stated.of(build.hole().depth()), Length.ZERO, posts);
        List<Finding> findings = new ArrayList<>();
        for (Finding finding : both.gate().findings()) {
            boolean own = finding.id().startsWith("sag.")
                    || finding.id().startsWith("hinge.")
                    || finding.id().startsWith("leaf.")
                    || finding.id().startsWith("post.");
            if (own) findings.add(finding);
        }
        findings.addAll(both.hinge().findings());
        findings.addAll(both.latch().findings());
        for (PostDesign post : List.of(both.hinge(), both.latch())) {
            Optional<Finding> shallow = tooShallow(post, build.hole().depth());
            if (shallow.isEmpty()) continue;
            findings.add(shallow.get());
            tooShort.computeIfAbsent(Dug.of(build), key -> new ArrayList<>()).add(post);
        }
        return findings;
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
