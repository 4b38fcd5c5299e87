package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Pressure;

/** What fills a leaf, in wind: boards, pickets, mesh or sheet between its rails. What helps any of them is a rail more, but in a slide leaf, which has none between its two. */
final class LeafFillWind {
    private LeafFillWind() {}

    /** @param wind strength level, on the gross face */
    static List<Finding> of(
            Gate gate, Leaf leaf, Cladding cladding, Pressure wind, DesignBasis basis, DisplayUnits display) {
        LeafSteel steel = new LeafSteel(leaf, wind, basis, display);
        List<Checked> checks = cladding.match(
                open -> List.of(),
                wood -> LeafBoards.of(leaf, wood, wind, basis, display),
                steel::pickets,
                steel::mesh,
                steel::sheet);
        return checks.stream().map(each -> cured(each, gate, leaf)).toList();
    }

    private static Finding cured(Checked check, Gate gate, Leaf leaf) {
        boolean lying = leaf.pickets().stream().anyMatch(Picket::lying);
        boolean slides = leaf.pins().isEmpty();
        return !lying && !slides && check.severity() != Severity.PASS
                ? check.withRemedies(List.of(anotherRail(gate, leaf)))
                : check;
    }

    private static Remedy anotherRail(Gate gate, Leaf leaf) {
        int more = leaf.rails().size() - 1;
        return new Remedy(
                "mid-rail",
                "give it " + (more == 1 ? "a mid rail" : more + " mid rails"),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of("gates[" + gate.id() + "].leaf.midRails=" + more));
    }
}
