package plumbleaf.engine.design;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.footing.DepthNeed;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.engine.strength.Interaction;
import plumbleaf.engine.strength.PostStrength;
import plumbleaf.engine.strength.WoodPostStrength;

/** How a post's steel and footing were worked out, in a line each. */
final class PostLinks {
    private PostLinks() {}

    static LinkWork steel(PostDesign post) {
        return new LinkWork(
                post.section()
                        .match(
                                steel ->
                                        "Pr/(2 Pc) + Mr/Mc, or Pr/Pc + 8/9 Mr/Mc; with torsion over 0.2: Pr/Pc + Mr/Mc + (Vr/Vc + Tr/Tc)2",
                                wood ->
                                        "(fc/Fc')2 + fb1/(Fb1' (1 - fc/FcE1)) + fb2/(Fb2' (1 - fc/FcE2)); shear and twist fv/Fv'"),
                numbers(post.check().governing().action())
                        + post.section()
                                .match(
                                        steel -> "; "
                                                + Interaction.capacities(
                                                        steel, post.post().outOfGround()),
                                        wood -> "; " + allowed(wood, post))
                        + "; " + post.section().name(),
                PostStrength.of(post.section()).clause().words(),
                lines(post));
    }

    /** Steel at grade line by line, or wood. */
    static List<WorkedLine> lines(PostDesign post) {
        CombinedAction governing = post.check().governing();
        Length height = post.post().outOfGround();
        return post.section()
                .match(
                        steel -> Interaction.lines(steel, governing.action(), height, true),
                        wood -> WoodPostStrength.of(wood).lines(governing, height));
    }

    private static String allowed(WoodPost wood, PostDesign post) {
        WoodPostStrength strength = WoodPostStrength.of(wood);
        double duration = WoodPostStrength.duration(post.check().governing().combination());
        return "Fb' " + DecimalText.whole(strength.bending().psi() * duration) + ", Fc' before buckling "
                + DecimalText.whole(strength.compression().psi() * duration) + ", Fv' "
                + DecimalText.whole(strength.shear().psi() * duration) + " psi, CD " + DecimalText.upTo(duration, 2);
    }

    static LinkWork footing(PostDesign post) {
        return new LinkWork(
                "depth needed / depth dug, each cause by its own rule",
                DecimalText.upTo(post.depth().inches(), 1) + " in. deep, "
                        + DecimalText.upTo(post.hole().inches(), 1) + " in. wide"
                        + deepest(post)
                                .map(need -> "; "
                                        + DecimalText.fixed(need.depth().inches(), 1) + " in. needed"
                                        + need.lateral()
                                                .map(work -> ", "
                                                        + numbers(work.worst().action()))
                                                .orElse(" for " + need.cause().key()))
                                .orElse(""),
                "IBC 2021 1807.3.2.1 and the job's rules; see the footing's own page",
                deepest(post)
                        .filter(need -> !post.depth().isZero())
                        .map(need -> List.of(WorkedLine.of("ratio", "dn / d")
                                .put("dn", need.depth())
                                .put("d", post.depth())
                                .note("depth needed as worked out with the post, over depth dug")
                                .gives(need.depth().inches() / post.depth().inches())))
                        .orElse(List.of()));
    }

    /** What asks for the deepest hole, binding or not. */
    private static Optional<DepthNeed> deepest(PostDesign post) {
        return post.footing().flatMap(is -> is.needs().stream().max(Comparator.comparing(DepthNeed::depth)));
    }

    /** The case that needs the deepest hole: not always the one that bends the post most. */
    static String footingCase(PostDesign post) {
        return deepest(post)
                .map(need -> need.lateral().map(work -> work.worst().name()).orElse("every case"))
                .orElseGet(() -> inCase(post));
    }

    static LinkWork support(PostDesign post, Checkpoint check) {
        return new LinkWork(
                "each check of what holds the post by its own rule: " + check.check(),
                worst(post),
                "see the findings of " + post.id());
    }

    /** The case that bends the post most. */
    static String inCase(PostDesign post) {
        if (post.actions().isEmpty()) return "no load";
        return Ties.most(post.actions(), each -> each.action().size().poundInches())
                .name();
    }

    private static String worst(PostDesign post) {
        BaseAction most = BaseAction.NONE;
        for (CombinedAction each : post.actions())
            if (Ties.isMore(each.action().size().poundInches(), most.size().poundInches())) most = each.action();
        return numbers(most);
    }

    private static String numbers(BaseAction most) {
        return DecimalText.whole(most.size().inPoundFeet()) + " lb-ft at grade, "
                + DecimalText.whole(most.push().pounds()) + " lb, "
                + DecimalText.whole(most.down().pounds())
                + " lb down";
    }
}
