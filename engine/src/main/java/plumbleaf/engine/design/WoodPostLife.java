package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.engine.strength.PostStrength;

/** How long a wood post may carry a gate: it rots where it leaves the ground, from the outside in, long before anything else of the gate is old. */
final class WoodPostLife {
    private static final double NEAR_IN = 1e-4;

    private WoodPostLife() {}

    /** A caution with how much rot the post has to spare; nothing of a steel post. */
    static Optional<Finding> finding(PostDesign post, DesignBasis basis, DisplayUnits display) {
        return post.section()
                .match(steel -> Optional.empty(), wood -> Optional.of(finding(post, wood, basis, display)));
    }

    private static Finding finding(PostDesign post, WoodPost wood, DesignBasis basis, DisplayUnits display) {
        Length height = post.post().outOfGround();
        List<CombinedAction> still = post.actions().stream()
                .filter(one -> !one.combination().hasWind())
                .toList();
        boolean allPass = carries(wood, post.actions(), height);
        boolean windApart = !allPass && basis != DesignBasis.ENGINEERED;
        Length spare = toSpare(wood, windApart ? still : post.actions(), height);
        String load = windApart ? "what hangs on it, wind apart," : "its load";
        String holds = spare.isZero()
                ? "it has no wood to spare"
                : "it carries " + load + " until " + display.length(spare) + " of its wood is gone all round at grade";
        return Checked.note(
                "post.life",
                Severity.CAUTION,
                post.id(),
                "Post " + post.id() + ", " + wood.name() + ": " + holds
                        + ". Order it treated for a post that carries something (AWPA U1 UC4B), or of heartwood alone; treat every cut and hole,"
                        + " slope its top or cap it, keep soil and mulch below the crown of its concrete. Reckon with some 20 to 25 years of cedar heartwood,"
                        + " 30 and more where treatment goes right through, 5 to 10 of anything else; dig round it and probe it once a year.",
                Basis.fromMemory(
                        "IBC 2021 1807.3.1; post farm trials, Oregon State University Research Contribution 26 (1999)"));
    }

    /**
     * Depth that may be gone all round before the post no longer carries: {@code ratio(b - 2 g, d - 2 g) = 1}, by halving. Zero where it does not carry as it is.
     * Check: WoodPostLifeTest.
     */
    static Length toSpare(WoodPost wood, List<CombinedAction> actions, Length height) {
        if (actions.isEmpty() || !carries(wood, actions, height)) return Length.ZERO;
        double sound = 0;
        double gone = Math.min(wood.depth().inches(), wood.width().inches()) / 2 - 0.01;
        while (gone - sound > NEAR_IN) {
            double middle = (sound + gone) / 2;
            if (carries(wood.lessRound(Length.inches(middle)), actions, height)) sound = middle;
            else gone = middle;
        }
        return Length.inches(sound);
    }

    private static boolean carries(WoodPost wood, List<CombinedAction> actions, Length height) {
        PostStrength strength = PostStrength.of(wood);
        for (CombinedAction each : actions) if (strength.ratio(each, height) > 1) return false;
        return true;
    }
}
