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
