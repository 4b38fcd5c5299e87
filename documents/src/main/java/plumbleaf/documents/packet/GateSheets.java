package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.view.ChainPicture;
import plumbleaf.documents.view.ClearanceCurve;
import plumbleaf.documents.view.DeflectedLeaf;
import plumbleaf.documents.view.GateElevation;
import plumbleaf.documents.view.GatePlanDetail;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.JointDetail;
import plumbleaf.documents.view.LeafSections;
import plumbleaf.documents.view.PairElevation;
import plumbleaf.documents.view.PairSwing;
import plumbleaf.documents.view.SagBar;
import plumbleaf.documents.view.SwingPlan;
import plumbleaf.engine.design.LoadChain;
import plumbleaf.engine.gate.AsSetFit;
import plumbleaf.engine.gate.EndsTurn;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.job.AsSet;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/** The sheets of one gate: the shop drawing, and how it swings and hangs. */
public final class GateSheets {
    private static final double NOTES_SHARE = 0.40;

    /** What of a sheet's height the elevation of a pair takes; the swing of both stands below. */
    private static final double PAIR_HIGH = 0.55;

    /** No joint is drawn higher than this on paper. */
    private static final double JOINT_HIGH = 4.6;

    private GateSheets() {}

    /** The elevation alone, for a file of its own: of a pair both leaves. */
    public static Drawing drawing(PacketSubject subject, GatePaper gate) {
        return gate.isPair() ? general(subject, gate) : shopDrawing(subject, gate);
    }

    /** Both leaves of a pair between their posts. */
    private static Drawing general(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        return Scale.fitted(
                subject.units(),
                scale -> PairElevation.frames(
                        gate.subjects().get(0), gate.subjects().get(1), gate.active(), scale),
                room.width() - 0.1,
                room.height() * PAIR_HIGH - Viewport.TITLE_IN);
    }

    /** The elevation of one leaf. */
    public static Drawing shopDrawing(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        double share = isSmall(subject) ? 1 : 1 - NOTES_SHARE;
        return Scale.fitted(
                subject.units(),
                scale -> GateElevation.shop(gate.subject(), scale),
                room.width() * share - 0.1,
                room.height() - Viewport.TITLE_IN - 0.1);
    }

    /** The joints from close by, one of each make, in rows; nothing where no joint of the leaf is welded. */
    private static Optional<Sheet> joints(PacketSubject subject, GatePaper gate) {
        List<JointDetail.Alike> kinds = JointDetail.kinds(gate.leaf());
        if (kinds.isEmpty()) return Optional.empty();
        Box room = Sheet.room(subject.options().sheets(), true);
        int across = Math.min(kinds.size(), isSmall(subject) ? 2 : 3);
        int down = (kinds.size() + across - 1) / across;
        double wide = room.width() / across;
        double high = room.height() / down;
        List<Viewport> viewports = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            JointDetail.Alike kind = kinds.get(i);
            double x = room.minX() + i % across * wide;
            int row = i / across;
            double top = room.maxY() - row * high;
            Drawing detail = Scale.fitted(
                    subject.units(),
                    scale -> JointDetail.of(gate.subject(), kind, scale),
                    wide - 0.3,
                    Math.min(high - Viewport.TITLE_IN - 0.2, JOINT_HIGH));
            viewports.add(Viewport.centred(
                    detail, new Box(x, top - high, x + wide, top), Integer.toString(i + 1) + ": " + kind.words()));
        }
        return Optional.of(sheet(
                subject,
                gate,
                "Joints",
                "as shown",
                List.of(
                        "Tack all corners, check both diagonals, then weld in turn across the frame.",
                        "Zinc off before the arc; fresh air; eyes and skin covered."),
                viewports,
                List.of()));
    }

    /** How the leaf is made where it is cut through: at a rail, at the latch, at a hinge. */
    private static List<Sheet> sections(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        int across = isSmall(subject) ? 1 : 2;
        double wide = room.width() / across;
        double high = room.height() / 2;
        List<Function<Scale, Drawing>> cuts = List.of(
                scale -> LeafSections.infill(gate.subject(), scale),
                scale -> LeafSections.latchSide(gate.subject(), scale),
                scale -> LeafSections.hingeSide(gate.subject(), scale));
        List<String> titles = List.of("A: upright through a rail", "B: level at the latch", "C: level at a hinge");
        List<Sheet> sheets = new ArrayList<>();
        List<Viewport> viewports = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            double x = room.minX() + viewports.size() % across * wide;
            int row = viewports.size() / across;
            double top = room.maxY() - row * high;
            Drawing cut = Scale.fitted(subject.units(), cuts.get(i), wide - 0.3, high - Viewport.TITLE_IN - 0.2);
            viewports.add(Viewport.centred(cut, new Box(x, top - high, x + wide, top), titles.get(i)));
            if (viewports.size() < 2 * across && i < cuts.size() - 1) continue;
            sheets.add(sheet(
                    subject,
                    gate,
                    "Sections",
                    "as shown",
                    List.of("Deburr every hole and edge before the leaf is coated."),
                    viewports,
                    List.of()));
            viewports = new ArrayList<>();
        }
        return sheets;
    }

    /** On letter and A4 there is no room for drawing and notes side by side. */
    private static boolean isSmall(PacketSubject subject) {
        PaperSize paper = subject.options().sheets();
        return paper == PaperSize.LETTER || paper == PaperSize.A4;
    }

    public static List<Drawing> pages(PacketSubject subject, GatePaper gate) {
        List<Sheet> sheets = new ArrayList<>();
        if (gate.isPair()) sheets.add(pair(subject, gate));
        for (GatePaper leaf : gate.leaves()) {
            if (isSmall(subject)) {
                sheets.addAll(small(subject, leaf));
            } else {
                sheets.add(shop(subject, leaf));
                sheets.add(swing(subject, leaf, leaf.subject().swing()));
            }
            joints(subject, leaf).ifPresent(sheets::add);
            sheets.addAll(sections(subject, leaf));
        }
        List<Drawing> pages = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) pages.add(sheets.get(i).page((i + 1) + " of " + sheets.size()));
        return pages;
    }

    private static Sheet pair(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        Drawing elevation = general(subject, gate);
        double split = room.maxY() - room.height() * PAIR_HIGH;
        Drawing swing = Scale.fitted(
                subject.units(),
                scale -> PairSwing.of(gate.subjects().get(0), gate.subjects().get(1), scale),
                room.width() - 0.1,
                split - room.minY() - Viewport.TITLE_IN - 0.1);
        return sheet(
                subject,
                gate,
                "General elevation of the pair",
                elevation.scale().words(),
                pairCautions(subject, gate),
                List.of(
                        Viewport.centred(
                                elevation,
                                new Box(room.minX(), split, room.maxX(), room.maxY()),
                                "Both leaves from outside"),
                        Viewport.centred(
                                swing,
                                new Box(room.minX(), room.minY(), room.maxX(), split),
                                "Swing of both from above, outside below")),
                List.of());
    }

    private static List<String> pairCautions(PacketSubject subject, GatePaper gate) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "The leaves are of opposite hand: each has its own shop drawing, leaf a is the left one from outside.");
        gate.pair()
                .ifPresent(pair -> cautions.add("Shut, the pair is held in wind by its "
                        + pair.rod().rod().name() + " with no more than "
                        + subject.length(pair.rod().exposed().inches()) + " free above the sleeve."));
        return cautions;
    }

    /** One drawing a sheet where it needs it, charts two a sheet. */
    private static List<Sheet> small(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        List<Sheet> sheets = new ArrayList<>();
        Drawing elevation = shopDrawing(subject, gate);
        sheets.add(sheet(
                subject,
                gate,
                "Gate shop drawing",
                elevation.scale().words(),
                shopCautions(subject, gate),
                List.of(Viewport.centred(elevation, room, "Frame from outside")),
                List.of()));
        plumbleaf.documents.typeset.Column notes = plumbleaf.documents.typeset.Column.of(
                subject.said().blocks(shopNotes(subject, gate)), room.width() - 0.1);
        sheets.add(sheet(
                subject,
                gate,
                "Gate shop notes",
                "",
                shopCautions(subject, gate),
                List.of(),
                notes.at(new Point(room.minX(), room.maxY()))));
        double high = room.height() / 2 - Viewport.TITLE_IN - 0.1;
        List<Drawing> drawings = new ArrayList<>();
        List<String> titles = new ArrayList<>();
        drawings.add(
                Scale.fitted(subject.units(), scale -> GatePlanDetail.of(gate.subject(), scale), room.width(), high));
        titles.add("Plan at the lower hinge");
        double end = gate.leaf().outline().latchEdge().inches();
        Swing swing = gate.subject().swing();
        drawings.add(Scale.fitted(
                subject.units(),
                scale -> SwingPlan.of(gate.mark(), swing, end, subject.units(), scale),
                room.width(),
                high));
        titles.add("Swing from above, outside below");
        drawings.add(plain(ClearanceCurve.of(gate.mark(), swing, room.width() - 1.2, subject.units())));
        titles.add("Room under the leaf before it drops, as it opens");
        for (GatePaper.Hangs hangs : gate.hangs()) {
            drawings.add(
                    plain(SagBar.of(gate.mark(), hangs.sag(), hangs.limits(), room.width() - 0.4, subject.units())));
            titles.add("What the latch corner loses");
            drawings.add(Scale.fitted(
                    subject.units(),
                    scale -> DeflectedLeaf.of(
                            gate.mark(), hangs.sag(), gate.leaf().hand().hinge(), scale),
                    room.width(),
                    high));
            titles.add("As it gives under its own weight");
            drawings.add(plain(chain(gate, hangs, room.width() - 0.4)));
            titles.add("Load path: how far each link is used");
        }
        for (int i = 0; i < drawings.size(); i += 2) {
            List<Viewport> viewports = new ArrayList<>();
            double middle = room.centre().y();
            viewports.add(Viewport.centred(
                    drawings.get(i), new Box(room.minX(), middle, room.maxX(), room.maxY()), titles.get(i)));
            if (i + 1 < drawings.size())
                viewports.add(Viewport.centred(
                        drawings.get(i + 1),
                        new Box(room.minX(), room.minY(), room.maxX(), middle),
                        titles.get(i + 1)));
            sheets.add(sheet(subject, gate, "Swing and hang", "as shown", List.of(), viewports, List.of()));
        }
        return sheets;
    }

    /** A sheet of one leaf is called by the leaf, one of the whole pair by the gate. */
    private static String named(GatePaper gate) {
        boolean leaf = gate.isPair() && gate.subjects().size() == 1;
        return leaf ? "Leaf " + gate.mark() : "Gate " + gate.id();
    }

    private static Sheet sheet(
            PacketSubject subject,
            GatePaper gate,
            String title,
            String scale,
            List<String> cautions,
            List<Viewport> viewports,
            List<Mark> loose) {
        return new Sheet(
                named(gate) + ", " + title.toLowerCase(java.util.Locale.ROOT),
                subject.options().sheets(),
                true,
                subject.block(gate, title, scale, cautions),
                viewports,
                loose);
    }

    private static Sheet shop(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        Drawing elevation = shopDrawing(subject, gate);
        double split = room.minX() + room.width() * (1 - NOTES_SHARE);
        Box left = new Box(room.minX(), room.minY(), split - 0.1, room.maxY());
        double wide = room.maxX() - split - 0.1;
        List<Block> blocks = subject.said().blocks(shopNotes(subject, gate));
        plumbleaf.documents.typeset.Column notes = plumbleaf.documents.typeset.Column.of(blocks, wide);
        double over = room.height() - notes.highIn() - Viewport.TITLE_IN - 0.2;
        Drawing plan = Scale.fitted(
                subject.units(), scale -> GatePlanDetail.of(gate.subject(), scale), wide, Math.max(over, 2.1));
        Box top = new Box(
                split + 0.1, room.maxY() - plan.paperHeightIn() - Viewport.TITLE_IN - 0.05, room.maxX(), room.maxY());
        List<Mark> loose = new ArrayList<>(notes.at(new Point(split + 0.1, top.minY() - 0.05)));
        return new Sheet(
                named(gate) + ", shop drawing",
                subject.options().sheets(),
                true,
                subject.block(gate, "Gate shop drawing", elevation.scale().words(), shopCautions(subject, gate)),
                List.of(
                        Viewport.centred(elevation, left, "Frame from outside"),
                        Viewport.centred(plan, top, "Plan at the lower hinge")),
                loose);
    }

    private static List<String> shopCautions(PacketSubject subject, GatePaper gate) {
        List<String> cautions = new ArrayList<>();
        double pounds = gate.leaf().weight().wet().pounds();
        cautions.add("The leaf weighs " + subject.units().weight(pounds) + " wet: "
                + (pounds > 100 ? "two people or a hoist lift it." : "keep hands out of the hinge gap."));
        cautions.add("No sealed tube into a zinc bath: it bursts. Drill vents and drains first, hinges stay out of the"
                + " bath.");
        cautions.add("Grind zinc off before welding; its fume makes ill. Fresh air.");
        return cautions;
    }

    /** What the drawing cannot show: pieces, checks, weights, welds. */
    private static List<Block> shopNotes(PacketSubject subject, GatePaper gate) {
        GateSubject view = gate.subject();
        Leaf leaf = view.plan().leaves().get(0);
        Section tube = view.parts().frame();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(
                2,
                "Frame: " + tube.name() + ", wall "
                        + DecimalText.fixed(tube.nominalWall().inches(), 3) + " in., "
                        + view.parts().joint().key() + " corners"));
        blocks.add(new Block.Note(
                "Steel Fy " + DecimalText.fixed(tube.yieldStress().inKsi(), 0) + " ksi, " + tube.yieldConfidence()
                        + "; seam inside where the coil allows."));
        Table.Builder pieces = Table.with(
                Column.left("Mark"),
                Column.words("Piece"),
                Column.right("Long point"),
                Column.right("Ends from square"),
                Column.left("Ends lie"));
        for (Member member : leaf.members())
            pieces.rowAbout(
                    member.id(),
                    tail(member.id()),
                    member.role().words(),
                    subject.inches(member.longPoint().inches()),
                    saw(member.firstEnd().fromSquare()) + " / "
                            + saw(member.lastEnd().fromSquare()),
                    lie(member));
        blocks.add(pieces.table());
        List<Length> diagonals = leaf.outline().diagonals();
        Table.Builder checks =
                Table.with(Column.words("Check before welding out"), Column.right("Size"), Column.left("Within"));
        checks.row("diagonal A to C", subject.length(diagonals.get(0).inches()), subject.within(2));
        checks.row("diagonal B to D", subject.length(diagonals.get(1).inches()), subject.within(2));
        checks.row("out to out", subject.length(leaf.width().inches()), subject.within(1));
        checks.row("flat, corner to corner", subject.inches(0), subject.within(2));
        blocks.add(checks.table());
        double cog = leaf.weight().centreOfGravity().r().inches()
                - leaf.outline().corners().get(0).r().inches();
        double cogUp = leaf.weight().centreOfGravity().z().inches()
                - leaf.outline().corners().get(0).z().inches();
        blocks.add(Block.Paragraph.of("Weight "
                + subject.units().weight(leaf.weight().wet().pounds()) + " wet, "
                + subject.units().weight(leaf.weight().dry().pounds()) + " dry. Center of gravity "
                + subject.length(cog)
                + " from the hinge edge, " + subject.length(cogUp) + " above the lower hinge corner."));
        if (leaf.outline().crest().isCurved())
            blocks.add(Block.Paragraph.of(LeafShop.curve(leaf, inches -> subject.length(inches))));
        for (GatePaper.Hangs hangs : gate.hangs())
            blocks.add(Block.Paragraph.of(
                    camber(subject, hangs.sag().byTime().camber().inches()) + " Hang it blocked "
                            + subject.length(hangs.sag().hangAllowance().inches())
                            + " high; it comes down that much when the blocks go."));
        blocks.add(
                Block.Paragraph.of(
                        "Heights are from the lower hinge corner of the outline, A. Sizes within " + subject.within(1)
                                + " (common practice, no source). Finish: as the order says; keep zinc and paint off hinge bores and threads."));
        if (gate.asked().asSet().isEmpty())
            blocks.add(new Block.Blank(List.of("Opening: top", "middle", "bottom", "by, date"), 0.30));
        for (AsSetFit fit : gate.subject().plan().fits())
            blocks.add(Block.Paragraph.of(
                    "Fitted plumb: " + subject.length(fit.clear().inches())
                            + " between the posts' plumb lines; latch gap "
                            + subject.inches(fit.latchGaps().get(0).inches()) + " at the bottom, "
                            + subject.inches(fit.latchGaps().get(1).inches()) + " in the middle, "
                            + subject.inches(fit.latchGaps().get(2).inches())
                            + " at the top. Packers under the hinges: see the crew sheet."));
        for (AsSet set : gate.asked().asSet())
            blocks.add(Block.Paragraph.bold("Opening as set " + set.date() + ": top "
                    + subject.length(set.top().inches()) + ", middle "
                    + subject.length(set.middle().inches()) + ", bottom "
                    + subject.length(set.bottom().inches()) + "."));
        return blocks;
    }

    private static String camber(PacketSubject subject, double inches) {
        return inches < 1.0 / 32
                ? "The jig needs no camber: the leaf alone sags less than "
                        + (subject.units() == DisplayUnits.US ? "1/32\"." : "1 mm.")
                : "Build the jig with the latch corner high by " + subject.length(inches) + ", the leaf's own sag.";
    }

    static String tail(String id) {
        String last = id.substring(id.lastIndexOf('.') + 1);
        return last.startsWith("m") ? last.substring(1) : last;
    }

    /** A saw setting to half a degree. */
    static String saw(Angle angle) {
        return DecimalText.fixed(Math.round(angle.inDegrees() * 2) / 2.0, 1) + "\u00b0";
    }

    static String lie(Member member) {
        boolean square = member.firstEnd().fromSquare().inDegrees() < 0.25
                && member.lastEnd().fromSquare().inDegrees() < 0.25;
        if (square) return "square";
        return member.ends() == EndsTurn.PARALLEL ? "parallel" : "opposed";
    }

    private static Sheet swing(PacketSubject subject, GatePaper gate, Swing swing) {
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
        viewports.add(unscaled(curve, curveRoom, "Room under the leaf before it drops, as it opens"));
        double x = room.maxX() - half;
        for (GatePaper.Hangs hangs : gate.hangs()) {
            Drawing bar = SagBar.of(gate.mark(), hangs.sag(), hangs.limits(), half - 0.4, subject.units());
            Drawing links = chain(gate, hangs, half - 0.4);
            double barFoot = room.maxY() - bar.paperHeightIn() - Viewport.TITLE_IN - 0.2;
            double linksFoot = room.minY();
            double linksTop = linksFoot + links.paperHeightIn() + Viewport.TITLE_IN + 0.2;
            viewports.add(unscaled(bar, new Box(x, barFoot, room.maxX(), room.maxY()), "What the latch corner loses"));
            viewports.add(unscaled(
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
                named(gate) + ", swing and hang",
                subject.options().sheets(),
                true,
                subject.block(gate, "Swing and hang", plan.scale().words(), cautions),
                viewports,
                List.of());
    }

    private static Drawing chain(GatePaper gate, GatePaper.Hangs hangs, double wideIn) {
        return ChainPicture.of(gate.id(), LoadChain.of(hangs.loadPath()), wideIn, false);
    }

    /** A chart: its title without a scale. */
    private static Viewport unscaled(Drawing chart, Box room, String title) {
        return Viewport.centred(plain(chart), room, title);
    }

    private static Drawing plain(Drawing chart) {
        return new Drawing(chart.name(), new Scale(1, ""), chart.marks(), chart.frame(), chart.order());
    }
}
