package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** What of a style is to be minded on a leaf. */
final class LeafFillFindings {
    private LeafFillFindings() {}

    static List<Finding> of(String leaf, GateSite site) {
        boolean trimmed =
                site.leafStyle().map(style -> style.trim().boards() > 0).orElse(false);
        if (trimmed)
            return List.of(Checked.note(
                    "leaf.trim",
                    Severity.CAUTION,
                    leaf,
                    leaf
                            + ": the fence is trimmed with cap, fascia, kick board or lattice; its leaf is boarded from bottom to top without, and neither"
                            + " bought, weighed nor drawn with trim. Say so to the customer, or allow for it.",
                    Basis.judgement("not worked out here")));
        boolean lying = site.leafStyle().map(LeafFillFindings::lies).orElse(false);
        if (!lying) return List.of();
        return List.of(Checked.note(
                "leaf.climbable",
                Severity.CAUTION,
                leaf,
                leaf
                        + ": boards that lie are a ladder for a child, and they bow between nailers more than 2 ft apart. Where the gate guards a pool or a drop"
                        + " take boards that stand.",
                Basis.commonPractice("lying boards")));
    }

    private static boolean lies(FenceStyle style) {
        return style.infill()
                .match(up -> false, both -> false, lying -> true, panel -> false, fabric -> false, mesh -> false);
    }
}
