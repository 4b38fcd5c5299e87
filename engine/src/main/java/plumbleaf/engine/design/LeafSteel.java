package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
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
        return leaf.panels().stream()
                .max((a, b) -> Double.compare(
                        sheet(cladding, a).ratio(asd()), sheet(cladding, b).ratio(asd())))
                .map(panel -> sheetIn(panel, sheet(cladding, panel)))
                .stream()
                .toList();
    }

    private Checked sheetIn(Panel panel, SheetBending sheet) {
        double used = sheet.ratio(asd());
        Length bow = sheet.bow(asd());
        String hangs = bow.compareTo(sheet.thickness()) > 0
                ? " It bows more than its thickness and begins to hang in its edges, which this leaves out: it will drum in a gust."
                : "";
        return Checked.of(
                "leaf.sheet",
                Severity.CAUTION,
                leaf.id(),
                panel.id() + ": sheet " + display.length(sheet.thickness()) + " thick in an opening of "
                        + display.length(sheet.across()) + " by " + display.length(sheet.up())
                        + "; wind bends it to " + DecimalText.fixed(used, 2) + " of what it may carry." + hangs,
                Basis.clause("AISC 360-22 F11 (ASD, omega 1.67); simply supported plate"),
                Measure.demand(used, 1, ""));
    }

    private static SheetBending sheet(Cladding.Sheet cladding, Panel panel) {
        return new SheetBending(cladding.thickness(), panel.width(), panel.height());
    }

    /** Woven wire is not: it hangs in its frame and bends nowhere. Only a caution: wires that yield hang in their edges too. */
    List<Checked> mesh(Cladding.Mesh cladding) {
        if (cladding.woven()) return List.of();
        return leaf.panels().stream()
                .max((a, b) -> Double.compare(
                        mesh(cladding, a).ratio(asd()), mesh(cladding, b).ratio(asd())))
                .map(panel -> meshIn(panel, mesh(cladding, panel)))
                .stream()
                .toList();
    }

    private Checked meshIn(Panel panel, MeshBending mesh) {
        double used = mesh.ratio(asd());
        return Checked.of(
                "leaf.mesh",
                Severity.CAUTION,
                leaf.id(),
                panel.id() + ": wires of " + display.length(mesh.wire()) + " in an opening of "
                        + display.length(mesh.across()) + " by " + display.length(mesh.up())
                        + "; wind bends them to " + DecimalText.fixed(used, 2) + " of what they may carry.",
                Basis.clause("AISC 360-22 F11 (ASD, omega 1.67); a grid of wires, safe split of the load"),
                Measure.demand(used, 1, ""));
    }

    private static MeshBending mesh(Cladding.Mesh cladding, Panel panel) {
        return new MeshBending(cladding.wire(), cladding.pitch(), cladding.upright(), panel.width(), panel.height());
    }

    private Pressure asd() {
        return wind.times(ASD);
    }
}
