package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;

/** What would keep a latch corner up: a deeper footing, a stiffer post, each tried on the same leaf in soft soil. */
final class SagRemedies {
    /** Steps of depth that are tried; beyond, another post is the answer. */
    private static final int STEPS = 4;

    /** A post that gains less than this on a drop cures nothing: it is less than a tape shows. Judgement. */
    private static final double SEEN_IN = 1.0 / 16;

    private SagRemedies() {}

    /** Six inches deeper, then as deep as it takes; the next post, then the one it takes. */
    static List<Remedy> of(GateSite site, PickedGate build, GatePlan plan) {
        List<Remedy> found = new ArrayList<>();
        DisplayUnits display = site.job().display();
        Length step = site.catalogue().depthStep();
        for (int steps = 1; steps <= STEPS; steps++) {
            PickedGate deeper = build.withDepth(build.hole().depth().plus(step.times(steps)));
            double after = after(site, deeper, plan);
            boolean enough = after <= limit(site);
            if (steps == 1 || enough)
                found.add(remedy(
                        site,
                        "deeper-footing",
                        "dig both footings " + display.length(deeper.hole().depth()) + " deep",
                        after,
                        "depth=" + LengthText.exact(deeper.hole().depth().inches())));
            if (enough) break;
        }
        boolean first = true;
        double before = after(site, build, plan);
        for (PostStock post : stiffer(site, build)) {
            double after = after(site, on(site, build, post), plan);
            boolean enough = after <= limit(site);
            if (enough || (first && before - after >= SEEN_IN))
                found.add(remedy(site, "stiffer-post", "hang it on a " + post.name(), after, "hingePost=" + post.id()));
            first = false;
            if (enough) break;
        }
        return found;
    }

    /** Pipe in the place of pipe, wood in the place of wood. */
    private static List<PostStock> stiffer(GateSite site, PickedGate build) {
        List<PostStock> all = build.hingePost()
                .match(
                        steel -> site.catalogue().sections().stream()
                                .filter(section -> section.family().equals("pipe")
                                        && section.id().startsWith("F1083"))
                                .map(section -> (PostStock) section)
                                .toList(),
                        wood -> List.<PostStock>copyOf(site.catalogue().woodPosts()));
        return all.stream()
                .filter(post -> stiffness(post) > stiffness(build.hingePost()))
                .sorted(Comparator.comparingDouble(SagRemedies::stiffness).thenComparing(PostStock::id))
                .limit(STEPS)
                .toList();
    }

    private static double stiffness(PostStock post) {
        return post.elasticModulus().psi() * post.ixIn4();
    }

    private static PickedGate on(GateSite site, PickedGate build, PostStock post) {
        boolean pair = site.gate().kind().match(swing -> false, is -> true, slide -> false, flagged -> false);
        return pair ? build.bothOn(post) : build.on(post);
    }

    private static double after(GateSite site, PickedGate build, GatePlan plan) {
        return GateWork.afterHangingSoft(site, build, plan).map(Offset::inches).orElse(0.0);
    }

    private static double limit(GateSite site) {
        return site.latch().tolerance().inches();
    }

    private static Remedy remedy(GateSite site, String id, String words, double afterIn, String edit) {
        String result = words + ": " + site.job().display().length(afterIn) + " after hanging";
        return new Remedy(
                id,
                result,
                OptionalDouble.of(afterIn / limit(site)),
                Optional.empty(),
                Optional.of("builds." + site.gate().id() + "." + edit));
    }
}
