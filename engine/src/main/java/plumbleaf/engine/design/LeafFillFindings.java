package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** What of a style no leaf carries here. */
final class LeafFillFindings {
    private LeafFillFindings() {}

    static List<Finding> of(String leaf, GateSite site) {
        boolean lying = site.leafStyle().map(LeafFillFindings::lies).orElse(false);
        if (!lying) return List.of();
        return List.of(Checked.note(
                "leaf.fill",
                Severity.CANNOT_SAY,
                leaf,
                leaf
                        + ": boards that lie are not worked out on a leaf; its weight and drop are those of the bare frame. Fill it with another style,"
                        + " pickets, mesh or sheet.",
                Basis.judgement("not worked out here")));
    }

    private static boolean lies(FenceStyle style) {
        return style.infill()
                .match(up -> false, both -> false, lying -> true, panel -> false, fabric -> false, mesh -> false);
    }
}
