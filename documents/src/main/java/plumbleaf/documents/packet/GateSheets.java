package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.view.ChainPicture;
import plumbleaf.documents.view.ClearanceCurve;
import plumbleaf.documents.view.DeflectedLeaf;
import plumbleaf.documents.view.GateElevation;
import plumbleaf.documents.view.GatePlanDetail;
import plumbleaf.documents.view.PairElevation;
import plumbleaf.documents.view.PairSwing;
import plumbleaf.documents.view.SagBar;
import plumbleaf.documents.view.SwingPlan;
import plumbleaf.engine.design.LoadChain;
import plumbleaf.engine.gate.EndsTurn;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;

/** The sheets of one gate: the shop drawing, and how it swings and hangs. */
public final class GateSheets {
    static final double NOTES_SHARE = 0.40;

    /** What of a sheet's height the elevation of a pair takes; the swing of both stands below. */
    private static final double PAIR_HIGH = 0.55;

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

    /** On letter and A4 there is no room for drawing and notes side by side. */
    static boolean isSmall(PacketSubject subject) {
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
                sheets.add(GateShopSheet.of(subject, leaf));
                sheets.add(SwingSheet.of(subject, leaf));
            }
            sheets.addAll(JointSheets.of(subject, leaf));
            sheets.addAll(SectionSheets.of(subject, leaf));
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
                GateShopSheet.cautions(subject, gate),
                List.of(Viewport.centred(elevation, room, "Frame from outside")),
                List.of()));
        plumbleaf.documents.typeset.Column notes = plumbleaf.documents.typeset.Column.of(
                subject.said().blocks(GateShopSheet.notes(subject, gate)), room.width() - 0.1);
        sheets.add(sheet(
                subject,
                gate,
                "Gate shop notes",
                "",
                GateShopSheet.cautions(subject, gate),
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
    static String named(GatePaper gate) {
        boolean leaf = gate.isPair() && gate.subjects().size() == 1;
        return leaf ? "Leaf " + gate.mark() : "Gate " + gate.id();
    }

    static Sheet sheet(
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

    static String tail(String id) {
        String last = id.substring(id.lastIndexOf('.') + 1);
        return last.startsWith("m") ? last.substring(1) : last;
    }

    /** A saw setting to half a degree. */
    static String saw(Angle angle) {
        return DecimalText.fixed(Math.round(angle.inDegrees() * 2) / 2.0, 1) + "\u00b0";
    }

    /** A dash for a piece that has no side from cut to cut. */
    static String shortPoint(PacketSubject subject, Member member) {
        return member.hasShortPoint() ? subject.inches(member.shortPoint().inches()) : "\u2013";
    }

    static String lie(Member member) {
        boolean square = member.firstEnd().fromSquare().inDegrees() < 0.25
                && member.lastEnd().fromSquare().inDegrees() < 0.25;
        if (square) return "square";
        return member.ends() == EndsTurn.PARALLEL ? "parallel" : "opposed";
    }

    static Drawing chain(GatePaper gate, GatePaper.Hangs hangs, double wideIn) {
        return ChainPicture.of(gate.id(), LoadChain.of(hangs.loadPath()), wideIn, false);
    }

    /** A chart: its title without a scale. */
    static Viewport unscaled(Drawing chart, Box room, String title) {
        return Viewport.centred(plain(chart), room, title);
    }

    private static Drawing plain(Drawing chart) {
        return new Drawing(chart.name(), new Scale(1, ""), chart.marks(), chart.frame(), chart.order());
    }
}
