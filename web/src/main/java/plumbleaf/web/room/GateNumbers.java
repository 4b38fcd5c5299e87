package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HingeUse;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.sag.ByCause;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.web.page.Bar;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;

/** What a designed gate comes to: swing, sag, hinges, the load path and the pieces of its leaf. */
final class GateNumbers {
    private final GateDesign gate;
    private final Figures figures;

    private GateNumbers(GateDesign gate, Figures figures) {
        this.gate = gate;
        this.figures = figures;
    }

    /** How it swings and how far it drops: what one changes the gate for. */
    static List<Panel> answers(GateDesign gate, Figures figures) {
        GateNumbers numbers = new GateNumbers(gate, figures);
        List<Panel> panels = new ArrayList<>();
        for (LeafHang hang : gate.plan().hangs()) panels.add(numbers.swing(hang));
        for (HungLeaf leaf : gate.hung()) panels.add(numbers.sag(leaf));
        gate.plan()
                .slide()
                .ifPresent(slide ->
                        panels.add(SlideNumbers.way(gate.id(), gate.plan().sentence(), slide, figures)));
        return panels;
    }

    /** Hinges, the load path, the pieces of the leaf. */
    static List<Panel> details(GateDesign gate, Figures figures) {
        GateNumbers numbers = new GateNumbers(gate, figures);
        List<Panel> panels = new ArrayList<>();
        for (HungLeaf leaf : gate.hung()) panels.add(numbers.hinges(leaf));
        gate.pair().ifPresent(pair -> panels.add(PairNumbers.panel(gate.id(), pair, figures)));
        gate.slide().ifPresent(slide -> panels.addAll(SlideNumbers.carried(gate.id(), slide, figures)));
        if (!gate.loadPath().isEmpty()) panels.add(numbers.loadPath());
        gate.rated().ifPresent(gust -> panels.add(numbers.gusts(gust)));
        for (Leaf leaf : gate.plan().leaves()) panels.add(numbers.leaf(leaf));
        return panels;
    }

    /** What numbers of one leaf are called by: the gate, or the leaf of a pair. */
    private String mark(String leaf) {
        return gate.plan().hangs().size() == 1 ? gate.id() : leaf;
    }

    private String title(String what, String leaf) {
        return gate.plan().hangs().size() == 1 ? what : what + " of " + leaf;
    }

    private Panel swing(LeafHang hang) {
        Swing swing = hang.swing();
        String id = mark(hang.id());
        return Panel.of(title("Swing", hang.id()), id)
                .withRows(List.of(
                        new Row(id + ".hand", "Hand", gate.plan().sentence(), "", id),
                        new Row(
                                id + ".running",
                                "Least room under the leaf",
                                figures.signed(swing.running().clear()),
                                "hung, dropped, ground risen; "
                                        + figures.length(swing.running().atRadius()) + " from the pins, "
                                        + Figures.angle(swing.running().atAngle()) + " open",
                                id),
                        new Row(
                                id + ".max",
                                "Opens freely to",
                                Figures.angle(swing.maxAngle()),
                                swing.limitedBy()
                                        .match(nothing -> "", ground -> "the ground stops it", struck -> struck.what()),
                                id),
                        new Row(
                                id + ".closed",
                                "Largest gap when shut",
                                figures.length(swing.closedLargest().clear()),
                                "",
                                id),
                        new Row(id + ".shots", "Shots may be off by", figures.length(swing.shotError()), "", id)));
    }

    private Panel sag(HungLeaf leaf) {
        GateSag sag = leaf.sag();
        ByCause cause = sag.byCause();
        String id = mark(leaf.id());
        double limit =
                leaf.limits().release().inches() + Math.max(0, cause.leaf().inches());
        double full = Math.max(sag.total().inches(), limit) * 1.15;
        Bar bar = new Bar(
                "Latch corner falls",
                figures.length(sag.total()),
                List.of(
                        part("leaf", cause.leaf(), 0),
                        part("hinges give", cause.hingeFlex(), 1),
                        part("hinge play", cause.hingeSlack(), 4),
                        part("post", cause.post(), 2),
                        part("footing", cause.footing(), 3)),
                List.of(new Bar.Limit("good hang", figures.length(leaf.limits().release()), limit)),
                full > 0 ? full : 1);
        List<Row> rows = new ArrayList<>(List.of(
                new Row(
                        id + ".camber",
                        "Built into the jig",
                        figures.length(sag.byTime().camber()),
                        "the leaf's own part",
                        id),
                new Row(
                        id + ".hang",
                        "Block the corner high by",
                        figures.length(sag.hangAllowance()),
                        "comes when the blocks are pulled",
                        id),
                new Row(
                        id + ".after",
                        "In the years after",
                        figures.length(sag.byTime().afterHanging().total()),
                        "in soft soil " + figures.length(sag.afterHangingSoft()) + "; the latch takes "
                                + figures.length(leaf.limits().latch()),
                        id),
                new Row(
                        id + ".soil",
                        "Soft, likely, stiff soil",
                        figures.length(sag.soil().soft()) + " \u00b7 "
                                + figures.length(sag.soil().likely()) + " \u00b7 "
                                + figures.length(sag.soil().stiff()),
                        "",
                        id)));
        sag.ice()
                .ifPresent(ice -> rows.add(new Row(
                        id + ".ice",
                        "Under " + figures.length(ice.thickness()) + " of ice",
                        figures.length(ice.drop()),
                        figures.weight(ice.weight()) + " of ice; it goes with the thaw",
                        id)));
        sag.sixDeeper()
                .ifPresent(deeper ->
                        rows.add(new Row(id + ".deeper", "With 6 in. more hole", figures.length(deeper), "", id)));
        return Panel.of(title("Sag", leaf.id()), id).withBars(List.of(bar)).withRows(rows);
    }

    private Bar.Part part(String label, Offset size, int kind) {
        return new Bar.Part(label, figures.units().movement(size.inches()), Math.max(0, size.inches()), kind);
    }

    private Panel hinges(HungLeaf leaf) {
        List<Table.Line> lines = new ArrayList<>();
        for (HingeUse hinge : leaf.hinges()) {
            lines.add(new Table.Line(
                    mark(leaf.id()),
                    List.of(
                            hinge.id(),
                            figures.length(hinge.z()),
                            figures.force(hinge.horizontal()),
                            hinge.utilisation().isPresent()
                                    ? Figures.ratio(hinge.utilisation().getAsDouble())
                                    : "cannot say",
                            hinge.worst().combination().key())));
        }
        return Panel.of(title("Hinges", leaf.id()), mark(leaf.id()))
                .withTables(List.of(new Table(
                        "Worst sideways pull of each",
                        List.of("Hinge", "Above grade", "Pull", "Used", "Case"),
                        lines)));
    }

    private Panel loadPath() {
        List<Table.Line> lines = new ArrayList<>();
        for (LinkUse link : gate.loadPath())
            lines.add(new Table.Line(
                    link.part(), List.of(link.link(), link.part(), Figures.ratio(link.utilisation()), link.inCase())));
        return Panel.of("Load path", gate.id())
                .withTables(
                        List.of(new Table("From the weakest link", List.of("Link", "Part", "Used", "Case"), lines)));
    }

    /** The gust that each of its parts stands. */
    private Panel gusts(RatedGust gust) {
        List<Table.Line> lines = new ArrayList<>();
        for (RatedGust.Part part : gust.parts())
            lines.add(new Table.Line(
                    gate.id(),
                    List.of(
                            part.link(),
                            part.isNotTroubled() ? "any" : figures.speed(part.allowable()),
                            part.isNotTroubled() ? "any" : figures.speed(part.ultimate()))));
        return Panel.of("Rated gust of every part", gate.id())
                .withTables(List.of(
                        new Table("Part by part", List.of("Part", "To its allowable", "To where it gives"), lines)));
    }

    private Panel leaf(Leaf leaf) {
        List<Table.Line> lines = new ArrayList<>();
        for (var member : leaf.members())
            lines.add(new Table.Line(
                    member.id(),
                    List.of(
                            member.role().words(),
                            figures.length(member.longPoint()),
                            figures.weight(member.weight()))));
        return Panel.of("Leaf " + leaf.id(), leaf.id())
                .withRows(List.of(
                        new Row(leaf.id() + ".width", "Width", figures.length(leaf.width()), "", leaf.id()),
                        new Row(
                                leaf.id() + ".wet",
                                "Weight, wet wood",
                                figures.weight(leaf.weight().wet()),
                                "",
                                leaf.id()),
                        new Row(
                                leaf.id() + ".dry",
                                "Weight, dry wood",
                                figures.weight(leaf.weight().dry()),
                                "",
                                leaf.id())))
                .withTables(List.of(
                        new Table("Frame, long point to long point", List.of("Piece", "Length", "Weight"), lines)));
    }
}
