package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Nailer;
import plumbleaf.engine.gate.RailLoad;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.NailerBolt;
import plumbleaf.engine.takeoff.BoltItem;

/** The bolts that carry the boards of a leaf into its rails: wood under the bolt, by the worst rail. */
final class NailerFindings {
    private static final Basis CLAUSE =
            Basis.clause("NDS 2018 12.3 yield modes, weight lasting 0.9, wet 0.7 (Tables 2.3.2, 11.3.3)");

    private NailerFindings() {}

    /** Nothing where no nailer is bolted on. */
    static List<Finding> of(Leaf leaf, Section frame, Cladding cladding) {
        return cladding.match(
                open -> List.of(),
                wood -> of(leaf, frame, wood),
                pickets -> List.of(),
                mesh -> List.of(),
                sheet -> List.of());
    }

    private static List<Finding> of(Leaf leaf, Section frame, Cladding.Wood wood) {
        Length bolt = BoltItem.NAILER;
        Force may = NailerBolt.allowed(
                bolt, wood.nailers().ovenDryGravity(), wood.style().railThickness(), frame.designWall());
        Optional<Nailer> worst = Optional.empty();
        double most = 0;
        for (Nailer nailer : leaf.nailers()) {
            if (nailer.bolts().isEmpty()) continue;
            double here = carriedLb(leaf, nailer) / nailer.bolts().size();
            if (Ties.isMore(here, most)) {
                most = here;
                worst = Optional.of(nailer);
            }
        }
        if (worst.isEmpty()) return List.of();
        Length edge = wood.style().railWidth().times(0.5);
        boolean nearEdge = edge.compareTo(NailerBolt.edgeNeeded(bolt)) < 0;
        String rail = leaf.member(worst.get().rail())
                .map(Member::id)
                .orElse(worst.get().rail());
        String message = leaf.id() + ": each of the " + worst.get().bolts().size() + " bolts of the nailer on " + rail
                + " carries " + DecimalText.whole(most) + " lb of wet boards; in "
                + wood.nailers().name()
                + " it may carry " + DecimalText.whole(may.pounds()) + " lb (mode "
                + NailerBolt.mode(
                        bolt, wood.nailers().ovenDryGravity(), wood.style().railThickness(), frame.designWall())
                + ")."
                + (nearEdge ? " It sits nearer than 4 diameters to the nailer's edge; use a wider nailer." : "");
        Measure used = nearEdge
                ? Measure.provided(edge.inches(), NailerBolt.edgeNeeded(bolt).inches(), "in")
                : Measure.demand(most, may.pounds(), "lb");
        return List.of(Checked.of("leaf.nailer", Severity.MUST_FIX, leaf.id(), message, CLAUSE, used));
    }

    /** All that hangs on the rail by its nailer; on an upright nailer, all that hangs on it. */
    private static double carriedLb(Leaf leaf, Nailer nailer) {
        double sum = 0;
        for (RailLoad load : leaf.railLoads()) {
            boolean own = nailer.upright()
                    ? load.from().inches() <= nailer.middle().r().inches()
                            && nailer.middle().r().inches() <= load.to().inches()
                    : load.rail().equals(nailer.rail());
            if (own) sum += load.wet().pounds();
        }
        return sum;
    }
}
