package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.view.ClearanceCurve;
import plumbleaf.documents.view.DeflectedLeaf;
import plumbleaf.documents.view.SagBar;
import plumbleaf.documents.view.SwingPlan;
import plumbleaf.engine.gate.Swing;

/** How a leaf swings, what it loses at the latch, and the links of its load path. */
final class SwingSheet {
    private SwingSheet() {}

    static Sheet of(PacketSubject subject, GatePaper gate) {
        Swing swing = gate.subject().swing();
        Box room = Sheet.room(subject.options().sheets(), true);
        double half = room.width() / 2 - 0.15;
        double end = gate.leaf().outline().latchEdge().inches();
        double topHigh = room.height() * 0.55;
        Drawing plan = Scale.fitted(
                subject.units(),
                scale -> SwingPlan.of(gate.mark(), swing, end, subject.units(), scale),
                half,
                topHigh - Viewport.TITLE_IN);
        List<Viewport> viewports = new ArrayList<>();
        double mid = room.maxY() - topHigh;
        viewports.add(Viewport.centred(
                plan, new Box(room.minX(), mid, room.minX() + half, room.maxY()), "Swing from above, outside below"));
        Drawing curve = ClearanceCurve.of(gate.mark(), swing, half - 1.1, subject.units());
        Box curveRoom = new Box(room.minX(), room.minY(), room.minX() + half, mid);
        viewports.add(GateSheets.unscaled(curve, curveRoom, "Room under the leaf before it drops, as it opens"));
        double x = room.maxX() - half;
        for (GatePaper.Hangs hangs : gate.hangs()) {
            Drawing bar = SagBar.of(gate.mark(), hangs.sag(), hangs.limits(), half - 0.4, subject.units());
            Drawing links = GateSheets.chain(gate, hangs, half - 0.4);
            double barFoot = room.maxY() - bar.paperHeightIn() - Viewport.TITLE_IN - 0.2;
            double linksFoot = room.minY();
            double linksTop = linksFoot + links.paperHeightIn() + Viewport.TITLE_IN + 0.2;
            viewports.add(GateSheets.unscaled(
                    bar, new Box(x, barFoot, room.maxX(), room.maxY()), "What the latch corner loses"));
            viewports.add(GateSheets.unscaled(
                    links, new Box(x, linksFoot, room.maxX(), linksTop), "Load path: how far each link is used"));
            Drawing bent = Scale.fitted(
                    subject.units(),
                    scale -> DeflectedLeaf.of(
                            gate.mark(), hangs.sag(), gate.leaf().hand().hinge(), scale),
                    half,
                    Math.max(1.5, barFoot - linksTop - Viewport.TITLE_IN - 0.2));
            viewports.add(Viewport.centred(
                    bent, new Box(x, linksTop, room.maxX(), barFoot), "As it gives under its own weight"));
        }
        List<String> cautions = List.of(
                "Heights from shots are good to "
                        + subject.length(swing.shotError().inches())
                        + ": below twice that, shoot again at the named point.",
                "Check the swing with a straight edge before the leaf is welded.");
        return new Sheet(
                GateSheets.named(gate) + ", swing and hang",
                subject.options().sheets(),
                true,
                subject.block(gate, "Swing and hang", plan.scale().words(), cautions),
                viewports,
                List.of());
    }
}
