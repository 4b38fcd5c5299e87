package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.FenceTrim;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** What of a style is to be minded on a leaf. */
final class LeafFillFindings {
    private LeafFillFindings() {}

    /** @param worn style it is boarded in; none where it is filled otherwise */
    static List<Finding> of(String leaf, GateSite site, Optional<FenceStyle> worn) {
        Optional<String> missing = worn.flatMap(style -> missing(style, site));
        if (missing.isPresent())
            return List.of(Checked.note(
                    "leaf.trim",
                    Severity.CAUTION,
                    leaf,
                    leaf + ": " + missing.get() + " Say so to the customer, or allow for it.",
                    Basis.judgement("not worked out here")));
        boolean lying = worn.map(LeafFillFindings::lies).orElse(false);
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

    /** What of the fence's trim its leaf goes without. */
    private static Optional<String> missing(FenceStyle style, GateSite site) {
        FenceTrim trim = style.trim();
        boolean curved = !site.gate().leaf().top().curve().isZero();
        if (trim.boards() == 0) return Optional.empty();
        if (lies(style))
            return Optional.of("the fence is trimmed; the lying boards of its leaf go from bottom to top without.");
        if (curved && (trim.cap().isPresent() || trim.fascia().isPresent()))
            return Optional.of("the fence has a cap or a fascia; the curved top of its leaf goes without.");
        return trim.lattice()
                .map(band -> "the fence has a band of lattice; the boards of its leaf run on up in its place.");
    }

    private static boolean lies(FenceStyle style) {
        return style.infill()
                .match(up -> false, both -> false, lying -> true, panel -> false, fabric -> false, mesh -> false);
    }
}
