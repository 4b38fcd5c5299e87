package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.gate.Fitting;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafTrim;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Nailer;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.WorkedLine;

/** What a leaf weighs, piece by piece with its lever arm, and where its center of gravity comes to lie. */
final class WeightCalculation {
    private WeightCalculation() {}

    /**
     * Pieces that are alike.
     *
     * @param moment about where x is measured from, lb-in
     */
    private record Share(String what, int count, double length, double perFoot, double pounds, double moment) {}

    /** @param zero where x is measured from */
    static void add(Paper.Builder paper, Leaf leaf, String zero) {
        List<Share> frame = frame(leaf);
        List<Share> infill = infill(leaf);
        List<Share> hardware = hardware(leaf);
        Table.Builder table = Table.with(
                Column.words("Piece"),
                Column.right("How many"),
                Column.right("Long (in.)"),
                Column.right("w (lb/ft)"),
                Column.right("W (lb)"),
                Column.right("x (in.)"),
                Column.right("W x (lb-in)"));
        for (List<Share> part : List.of(frame, infill, hardware)) for (Share each : part) row(table, each);
        paper.subheading("Weight list").add(table.table());
        paper.note("x from " + zero
                + " to the middle of the piece; steel by its nominal wall, wood wet. Pieces that are alike stand in one"
                + " row, x then is the mean. Of a row with w: W = w \u00d7 long / 12.");
        paper.add(new Block.Worked(
                "Weight and center of gravity of leaf " + leaf.id(),
                "statics",
                "frame, infill and hardware are the sums of the list above; M their moments about " + zero,
                lines(leaf, zero, frame, infill, hardware)));
    }

    private static List<WorkedLine> lines(
            Leaf leaf, String zero, List<Share> frame, List<Share> infill, List<Share> hardware) {
        WorkedLine weight = WorkedLine.of("W", "frame + infill + hardware")
                .put("frame", pounds(frame), "lb")
                .put("infill", pounds(infill), "lb")
                .put("hardware", pounds(hardware), "lb")
                .gives(leaf.weight().wet());
        double arm = leaf.weight().centreOfGravity().r().inches();
        WorkedLine moment = WorkedLine.of("M", "frame + infill + hardware")
                .put("frame", moment(frame), "lb-in")
                .put("infill", moment(infill), "lb-in")
                .put("hardware", moment(hardware), "lb-in")
                .gives(leaf.weight().wet().pounds() * arm, "lb-in");
        WorkedLine gravity = WorkedLine.of("a", "M / W")
                .put(moment)
                .put(weight)
                .note("center of gravity from " + zero)
                .gives(arm, "in.");
        return List.of(weight, moment, gravity);
    }

    private static List<Share> frame(Leaf leaf) {
        List<Share> shares = new ArrayList<>();
        for (Member member : leaf.members())
            shares.add(new Share(
                    member.id().substring(leaf.id().length() + 1) + " "
                            + member.role().words() + ", "
                            + member.section().name(),
                    1,
                    member.cutLength().inches(),
                    member.section().weightPerFoot().pounds(),
                    member.weight().pounds(),
                    member.weight().pounds() * member.middle().r().inches()));
        return shares;
    }

    private static List<Share> infill(Leaf leaf) {
        List<Share> shares = new ArrayList<>();
        for (Nailer nailer : leaf.nailers())
            shares.add(of("nailer", nailer.wet().pounds(), nailer.middle().r().inches()));
        for (Picket picket : leaf.pickets()) {
            double middle = picket.r().inches() + picket.width().inches() / 2;
            shares.add(of(
                    picket.lying() ? "boards that lie" : "pickets", picket.wet().pounds(), middle));
        }
        for (LeafTrim trim : leaf.trim())
            shares.add(of(
                    trim.use() + " board",
                    trim.wet().pounds(),
                    trim.middle().r().inches()));
        for (Panel panel : leaf.panels())
            shares.add(of(
                    "panel " + panel.id(),
                    panel.weight().pounds(),
                    panel.middleR().inches()));
        return alike(shares);
    }

    private static List<Share> hardware(Leaf leaf) {
        List<Share> shares = new ArrayList<>();
        for (Fitting fitting : leaf.fittings())
            shares.add(of(
                    fitting.what(), fitting.weight().pounds(), fitting.at().r().inches()));
        return alike(shares);
    }

    private static Share of(String what, double pounds, double armIn) {
        return new Share(what, 1, 0, 0, pounds, pounds * armIn);
    }

    private static List<Share> alike(List<Share> each) {
        Map<String, Share> sums = new LinkedHashMap<>();
        for (Share share : each)
            sums.merge(
                    share.what(),
                    share,
                    (a, b) -> new Share(
                            a.what(), a.count() + b.count(), 0, 0, a.pounds() + b.pounds(), a.moment() + b.moment()));
        return List.copyOf(sums.values());
    }

    private static double pounds(List<Share> shares) {
        return shares.stream().mapToDouble(Share::pounds).sum();
    }

    private static double moment(List<Share> shares) {
        return shares.stream().mapToDouble(Share::moment).sum();
    }

    private static void row(Table.Builder table, Share share) {
        if (share.pounds() == 0) return;
        table.row(
                share.what(),
                Integer.toString(share.count()),
                share.length() == 0 ? "\u2013" : DecimalText.upTo(share.length(), 4),
                share.perFoot() == 0 ? "\u2013" : DecimalText.upTo(share.perFoot(), 4),
                WorkedLine.number(share.pounds()),
                WorkedLine.number(share.moment() / share.pounds()),
                WorkedLine.number(share.moment()));
    }
}
