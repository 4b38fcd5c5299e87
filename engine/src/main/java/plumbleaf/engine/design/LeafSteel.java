package plumbleaf.engine.design;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.strength.MeshBending;
import plumbleaf.engine.strength.SheetBending;
import plumbleaf.engine.strength.SteelRailCheck;

/**
 * Steel in a leaf's frame, in wind: a picket as a bar between two rails, a sheet as a plate, welded mesh as a grid. Check: LeafSteelTest.
 *
 * @param wind strength level, on the gross face
 */
record LeafSteel(Leaf leaf, Pressure wind, DesignBasis basis, DisplayUnits display) {
    /** Part of strength-level wind in allowable-stress design. Source: ASCE 7-16 2.4.1. */
    private static final double ASD = Combination.D_W.wind();

    /** Each takes the wind of its pitch. One that stands past its last rail by c bends as a span of 2 c does: {@code w c2 / 2 = w (2 c)2 / 8}. */
    List<Checked> pickets(Cladding.Pickets cladding) {
        if (leaf.pickets().isEmpty()) return List.of();
        double pitch = cladding.section().width().inches() + leaf.picketGap().inches();
        double span = cladding.punched() ? punchedSpanIn() : longestPieceIn();
        SteelRailCheck bar = new SteelRailCheck(
                "picket", cladding.section(), Length.inches(span), false, 0, wind.inPsi() * pitch, Force.ZERO);
        return List.of(Checked.of(
                "leaf.pickets",
                basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION,
                leaf.id(),
                leaf.id() + ": its pickets, " + cladding.section().name() + ", span " + display.length(bar.span())
                        + " from rail to rail; wind bends them to " + DecimalText.fixed(bar.windRatio(), 2)
                        + " of what they may carry.",
                Basis.clause("AISC 360-22 F7, F8 (ASD, omega 1.67)"),
                Measure.demand(bar.windRatio(), 1, "")));
    }

    private double longestPieceIn() {
        return leaf.pickets().stream()
                .mapToDouble(each -> each.length().inches())
                .max()
                .orElse(0);
    }

    private double punchedSpanIn() {
        Picket longest = leaf.pickets().get(0);
        for (Picket each : leaf.pickets()) if (each.length().compareTo(longest.length()) > 0) longest = each;
        return RailSpans.of(leaf).asked(longest);
    }

    /** Only a caution: a sheet that yields at its middle still hangs in its edges, but it drums and keeps the dent. */
    List<Checked> sheet(Cladding.Sheet cladding) {
        return worst(panel -> {
            SheetBending sheet = new SheetBending(cladding.thickness(), across(panel), panel.height());
            String hangs = sheet.bow(asd()).compareTo(sheet.thickness()) > 0
                    ? " It bows more than its thickness and begins to hang in its edges, which this leaves out: it will drum in a gust."
                    : "";
            return panel(
                    "leaf.sheet",
                    panel,
                    "sheet " + display.length(sheet.thickness()) + " thick",
                    sheet.ratio(asd()),
                    hangs,
                    "simply supported plate");
        });
    }

    /** Woven wire is not asked: it hangs in its frame. Only a caution: wires that yield hang in their edges too. */
    List<Checked> mesh(Cladding.Mesh cladding) {
        if (cladding.woven()) return List.of();
        return worst(panel -> {
            MeshBending mesh = new MeshBending(
                    cladding.wire(), cladding.pitch(), cladding.upright(), across(panel), panel.height());
            return panel(
                    "leaf.mesh",
                    panel,
                    "mesh of " + display.length(mesh.wire()) + " wire",
                    mesh.ratio(asd()),
                    "",
                    "a grid of wires, any safe split of the load");
        });
    }

    /** Of all panels the one that is used most. */
    private List<Checked> worst(Function<Panel, Checked> check) {
        return leaf.panels().stream()
                .map(check)
                .max(Comparator.comparingDouble(
                        each -> each.measure().orElseThrow().measured()))
                .stream()
                .toList();
    }

    private Checked panel(String id, Panel panel, String what, double used, String more, String method) {
        return Checked.of(
                id,
                Severity.CAUTION,
                leaf.id(),
                panel.id() + ": " + what + " in an opening of " + display.length(across(panel)) + " by "
                        + display.length(panel.height()) + "; wind takes " + DecimalText.fixed(used, 2)
                        + " of its bending strength." + more,
                Basis.clause("AISC 360-22 F11 (ASD, omega 1.67); " + method),
                Measure.demand(used, 1, ""));
    }

    /** The widest way in a panel from one upright to the next: the frame of a slide holds it at each of them. */
    private Length across(Panel panel) {
        double last = panel.corners().get(0).r().inches();
        double end = panel.corners().get(1).r().inches();
        double widest = 0;
        for (double at : uprights()) {
            if (at <= last || at >= end) continue;
            widest = Math.max(widest, at - last);
            last = at;
        }
        return Length.inches(Math.max(widest, end - last));
    }

    /** From the hinge or the tail onward. */
    private double[] uprights() {
        return leaf.members().stream()
                .filter(member -> member.role() == MemberRole.UPRIGHT)
                .mapToDouble(member -> member.middle().r().inches())
                .sorted()
                .toArray();
    }

    private Pressure asd() {
        return wind.times(ASD);
    }
}
