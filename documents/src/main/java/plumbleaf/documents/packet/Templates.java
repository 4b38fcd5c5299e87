package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.typeset.FullSizePages;
import plumbleaf.documents.view.BevelTemplate;
import plumbleaf.documents.view.DrillTemplate;
import plumbleaf.documents.view.WrapTemplate;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberEnd;
import plumbleaf.engine.quantity.DisplayUnits;

/** Full-size templates of a gate: saw angles, saddles, holes. What a shop without a digital readout marks steel from. */
public final class Templates {
    private Templates() {}

    /** Empty where nothing is drilled and every end is square. */
    public static List<Drawing> pages(PacketSubject subject, GatePaper gate) {
        List<List<Drawing>> pieces = new ArrayList<>();
        List<BevelTemplate.End> ends = new ArrayList<>();
        for (GatePaper leaf : gate.leaves()) ends.addAll(ends(leaf));
        pieces.add(BevelTemplate.of(ends));
        for (GatePaper leaf : gate.leaves()) pieces.add(WrapTemplate.of(leaf.subject()));
        for (GatePaper leaf : gate.leaves())
            for (Drawing tile : DrillTemplate.of(leaf.subject())) pieces.add(List.of(tile));
        pieces.removeIf(List::isEmpty);
        if (pieces.isEmpty()) return List.of();
        return FullSizePages.of(
                "Templates, gate " + gate.id(),
                subject.running(),
                CutAndDrill.release(subject, gate),
                subject.options().size(),
                subject.units() == DisplayUnits.METRIC,
                pieces);
    }

    private static List<BevelTemplate.End> ends(GatePaper gate) {
        List<BevelTemplate.End> ends = new ArrayList<>();
        for (Member member : gate.leaf().members()) {
            List<MemberEnd> both = List.of(member.firstEnd(), member.lastEnd());
            for (int i = 0; i < 2; i++)
                if (!both.get(i).coped())
                    ends.add(new BevelTemplate.End(
                            both.get(i).fromSquare(),
                            member.section().depth().inches(),
                            (gate.isPair() ? gate.mark() + "." : "") + GateSheets.tail(member.id()) + " "
                                    + (i == 0 ? "first" : "last")));
        }
        return ends;
    }
}
