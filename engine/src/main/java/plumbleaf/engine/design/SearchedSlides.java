package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Offset;

/** The builds of a slide gate that a search looks at: each carried by its rollers once. */
final class SearchedSlides {
    private final GateSite site;
    private final Map<String, Optional<Offset>> low = new LinkedHashMap<>();

    SearchedSlides(GateSite site) {
        this.site = site;
    }

    /** On its rollers, without the ground it runs over: that is the yard's and not the build's. */
    GateDesign carried(TriedBuild tried, GatePlan plan) {
        return GateWork.designOn(site, tried.build(), plan);
    }

    /** How far its nose comes low to the receiver; empty where its rear rollers find no place. */
    Optional<Offset> low(TriedBuild tried, GatePlan plan) {
        return low.computeIfAbsent(
                tried.build().id(),
                id -> SlideWork.sag(site, tried.build(), plan.slide().orElseThrow())
                        .map(sag -> sag.low()));
    }

    /**
     * The finding of a hole that is too light for what lifts its post. The whole hole is taken for concrete and the post for as long as it may be, so what fails here fails by
     * far. Nothing is said of a belled hole.
     */
    Optional<Finding> liftedOut(SlideDesign slide, FootPick foot) {
        SlideWheels.Most most = new SlideWheels(slide).uplift();
        Post post = site.post(most.front() ? slide.frontPost() : slide.rearPost());
        boolean plain = post.support()
                .match(
                        footing -> footing.bell().isNone(),
                        driven -> false,
                        plate -> false,
                        socket -> false,
                        wall -> false,
                        old -> false);
        if (!plain) return Optional.empty();
        double steel = foot.hingePost()
                .weightOf(post.outOfGround().plus(foot.hole().depth()))
                .pounds();
        double holds = SlidePosts.STANDING
                * (steel + Pour.of(foot.hole(), Area.ZERO).weight().pounds());
        if (most.value() <= holds) return Optional.empty();
        return Optional.of(Checked.of(
                "slide.uplift",
                Severity.MUST_FIX,
                site.gate().id(),
                site.gate().id() + ": the leaf lifts post " + post.id() + " with "
                        + DecimalText.whole(most.value()) + " lb or more; 0.6 of post and concrete is "
                        + DecimalText.whole(holds) + " lb at most",
                Basis.clause("ASCE 7-16 2.4.1 combination 7"),
                Measure.demand(most.value(), holds, "lb")));
    }

    /** What is the build's own: wheels, leaf, nose, hold against being lifted. A list that may grow. */
    List<Finding> own(GateDesign gate) {
        List<Finding> own = new ArrayList<>();
        for (Finding finding : gate.findings())
            if (OF_THE_BUILD.contains(finding.id()) || finding.id().startsWith("leaf.")) own.add(asked(finding));
        return new ArrayList<>(Findings.join(own));
    }

    /** A gust that keeps the nose from its receiver is a caution to somebody who built it so; a search finds another build. */
    private static Finding asked(Finding finding) {
        boolean aside = finding.id().equals("slide.across") && finding.severity() == Severity.CAUTION;
        return aside
                ? Checked.of(
                        finding.id(),
                        Severity.MUST_FIX,
                        finding.part(),
                        finding.message(),
                        finding.basis(),
                        finding.measure().orElseThrow())
                : finding;
    }

    private static final List<String> OF_THE_BUILD = List.of(
            "slide.rear",
            "slide.rollers",
            "slide.guides",
            "slide.wheel",
            "slide.bolts",
            "slide.nose",
            "slide.across",
            "slide.uplift",
            "sag.not-worked-out");
}
