package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HingeForce;

/** Hinges against what their maker says they carry. */
final class HingeChecks {
    private HingeChecks() {}

    /** Each hinge with the case that pulls or pushes it hardest. */
    static List<HingeUse> uses(Leaf leaf, List<CaseForces> cases, HingeModel model) {
        Force capacity = capacity(model);
        List<HingeUse> uses = new ArrayList<>();
        for (int at = 0; at < leaf.pins().size(); at++) {
            CaseForces worst = cases.get(0);
            double most = -1;
            for (CaseForces each : cases) {
                double here = pull(each.hinges().get(at));
                if (Ties.isMore(here, most)) {
                    most = here;
                    worst = each;
                }
            }
            OptionalDouble share =
                    capacity.isZero() ? OptionalDouble.empty() : OptionalDouble.of(most / capacity.pounds());
            HingeForce force = worst.hinges().get(at);
            uses.add(new HingeUse(force.id(), force.z(), worst, Force.pounds(Math.max(0, most)), capacity, share));
        }
        return uses;
    }

    private static double pull(HingeForce force) {
        double along = force.horizontal().pounds();
        double across = force.across().pounds();
        return Math.sqrt(along * along + across * across);
    }

    /**
     * What one hinge may be pulled sideways with: the couple of the leaf that its maker lets a pair carry, {@code H = W (b / 2) / d}.
     * Zero when the maker's sheet is not known. Source: statics of the maker's own rating; engineering judgement to read it so.
     */
    static Force capacity(HingeModel model) {
        double coupleLbIn =
                model.capacityPerPair().pounds() * model.capacityWidth().inches() / 2;
        return Force.pounds(coupleLbIn / model.capacitySpacing().inches());
    }

    static LinkWork work(HingeUse use, HingeModel model) {
        return new LinkWork(
                "H = W b / (2 d) of the maker's rating",
                DecimalText.whole(use.horizontal().pounds()) + " lb of "
                        + DecimalText.whole(use.capacity().pounds()) + " lb: "
                        + DecimalText.whole(model.capacityPerPair().pounds()) + " lb a pair at "
                        + DecimalText.upTo(model.capacityWidth().inches(), 1) + " in. wide, pins "
                        + DecimalText.upTo(model.capacitySpacing().inches(), 1) + " in. apart",
                model.source(),
                lines(use, model));
    }

    private static List<WorkedLine> lines(HingeUse use, HingeModel model) {
        HingeForce force = use.worst().hinges().stream()
                .filter(each -> each.id().equals(use.id()))
                .findFirst()
                .orElseThrow();
        WorkedLine pulled = WorkedLine.of("H", "sqrt(Ha\u00b2 + Hb\u00b2)")
                .put("Ha", Math.abs(force.horizontal().pounds()), "lb")
                .put("Hb", Math.abs(force.across().pounds()), "lb")
                .note("along the run and across it")
                .gives(use.horizontal());
        WorkedLine may = WorkedLine.of("Hc", "Wr \u00d7 br / (2 \u00d7 dr)")
                .put("Wr", model.capacityPerPair())
                .put("br", model.capacityWidth())
                .put("dr", model.capacitySpacing())
                .note("the maker's rating: leaf, width, pins apart")
                .gives(use.capacity());
        if (use.utilisation().isEmpty()) return List.of(pulled);
        return List.of(
                pulled,
                may,
                WorkedLine.of("ratio", "H / Hc")
                        .put(pulled)
                        .put(may)
                        .gives(use.utilisation().getAsDouble()));
    }

    static List<Finding> findings(String gate, List<HingeUse> hinges, HingeModel model) {
        if (hinges.isEmpty()) return List.of();
        if (model.capacityPerPair().isZero())
            return List.of(Checked.note(
                    "hinge.unknown",
                    Severity.CANNOT_SAY,
                    gate,
                    gate + ": what " + model.name() + " carries is not known; enter its maker's sheet.",
                    Basis.judgement("unknown is never a pass")));
        HingeUse worst = Ties.most(hinges, each -> each.horizontal().pounds());
        String message = gate + ": hinge " + worst.id() + " is pulled sideways with "
                + DecimalText.whole(worst.horizontal().pounds()) + " lb in "
                + worst.worst().combination().key() + ", leaf "
                + worst.worst().state().key() + "; its maker's rating comes to "
                + DecimalText.whole(worst.capacity().pounds()) + " lb.";
        return List.of(Checked.of(
                "hinge.capacity",
                Severity.MUST_FIX,
                gate,
                message,
                Basis.judgement("maker's rating read as a couple W b / 2 d; " + model.source()),
                Measure.demand(worst.horizontal().pounds(), worst.capacity().pounds(), "lb")));
    }
}
