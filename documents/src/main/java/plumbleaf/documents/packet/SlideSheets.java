package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.typeset.Column;
import plumbleaf.documents.view.JointDetail;
import plumbleaf.documents.view.SlideElevation;
import plumbleaf.documents.view.SlideReceiver;
import plumbleaf.documents.view.SlideSection;
import plumbleaf.documents.view.SlideWay;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Sticks;
import plumbleaf.engine.quantity.DecimalText;

/** The sheets of a slide gate: the whole leaf with its tail and its way from above; a section at its rollers, its receiver and how it is set; its joints and how it is welded. */
public final class SlideSheets {
    private static final double ELEVATION_SHARE = 0.62;
    private static final double SECTION_SHARE = 0.4;
    private static final double RECEIVER_SHARE = 0.45;
    private static final double WELD_SHARE = 0.36;

    private SlideSheets() {}

    /** The elevation alone, for a file of its own. */
    public static Drawing drawing(PacketSubject subject, SlidePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        return Scale.fitted(
                subject.units(),
                scale -> SlideElevation.shop(gate.subject(), scale),
                room.width() - 0.1,
                room.height() * ELEVATION_SHARE - Viewport.TITLE_IN);
    }

    public static List<Drawing> pages(PacketSubject subject, SlidePaper gate) {
        boolean small = GateSheets.isSmall(subject);
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(whole(subject, gate));
        sheets.add(section(subject, gate, !small));
        if (small) sheets.add(words(subject, gate, "Setting", notes(subject, gate)));
        sheets.add(joints(subject, gate, !small));
        if (small) sheets.add(words(subject, gate, "How it is welded", welding(subject, gate)));
        List<Drawing> pages = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) pages.add(sheets.get(i).page((i + 1) + " of " + sheets.size()));
        return List.copyOf(pages);
    }

    private static Sheet whole(PacketSubject subject, SlidePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        Drawing elevation = drawing(subject, gate);
        double split = room.maxY() - room.height() * ELEVATION_SHARE;
        Drawing way = Scale.fitted(
                subject.units(),
                scale -> SlideWay.of(gate.subject(), scale),
                room.width() - 0.1,
                split - room.minY() - Viewport.TITLE_IN - 0.1);
        return sheet(
                subject,
                gate,
                "Slide gate shop drawing",
                elevation.scale().words(),
                List.of(
                        Viewport.centred(
                                elevation,
                                new Box(room.minX(), split, room.maxX(), room.maxY()),
                                "The whole leaf from outside, closed"),
                        Viewport.centred(
                                way,
                                new Box(room.minX(), room.minY(), room.maxX(), split),
                                "Its way from above, outside below")),
                List.of());
    }

    /** @param noted with how it is set beside it, where the sheet has room for that */
    private static Sheet section(PacketSubject subject, SlidePaper gate, boolean noted) {
        Box room = Sheet.room(subject.options().sheets(), true);
        double split = room.minX() + room.width() * SECTION_SHARE;
        double half = (split + room.maxX()) / 2;
        double middle = room.centre().y();
        Box left = noted
                ? new Box(split + 0.1, room.minY(), half, room.minY() + room.height() * RECEIVER_SHARE)
                : new Box(split + 0.1, middle, room.maxX(), room.maxY());
        Box right = noted
                ? new Box(half, left.minY(), room.maxX(), left.maxY())
                : new Box(split + 0.1, room.minY(), room.maxX(), middle);
        List<Viewport> views = List.of(
                fitted(
                        subject,
                        scale -> SlideSection.of(gate.subject(), scale),
                        new Box(room.minX(), room.minY(), split - 0.1, room.maxY()),
                        "Section at the front rollers"),
                fitted(
                        subject,
                        scale -> SlideReceiver.fromOutside(gate.subject(), scale),
                        left,
                        "Receiver from outside"),
                fitted(
                        subject,
                        scale -> SlideReceiver.fromAbove(gate.subject(), scale),
                        right,
                        "Receiver from above, outside below"));
        return sheet(
                subject,
                gate,
                noted ? "Section and setting" : "Section",
                "as shown",
                views,
                noted
                        ? Column.of(subject.said().blocks(notes(subject, gate)), room.maxX() - split - 0.2)
                                .at(new Point(split + 0.1, room.maxY() - 0.05))
                        : List.of());
    }

    private static Viewport fitted(PacketSubject subject, Function<Scale, Drawing> drawn, Box room, String title) {
        Drawing drawing =
                Scale.fitted(subject.units(), drawn, room.width() - 0.2, room.height() - Viewport.TITLE_IN - 0.1);
        return Viewport.centred(drawing, room, title);
    }

    private static Sheet joints(PacketSubject subject, SlidePaper gate, boolean noted) {
        Box room = Sheet.room(subject.options().sheets(), true);
        double split = noted ? room.maxX() - room.width() * WELD_SHARE : room.maxX() + 0.1;
        return sheet(
                subject,
                gate,
                "Joints",
                "as shown",
                JointSheets.details(
                        subject,
                        JointDetail.kinds(gate.leaf()),
                        (kind, scale) -> JointDetail.of(gate.subject(), kind, scale),
                        new Box(room.minX(), room.minY(), split - 0.1, room.maxY())),
                noted
                        ? Column.of(subject.said().blocks(welding(subject, gate)), room.maxX() - split - 0.1)
                                .at(new Point(split + 0.1, room.maxY() - 0.05))
                        : List.of());
    }

    private static Sheet words(PacketSubject subject, SlidePaper gate, String title, List<Block> blocks) {
        Box room = Sheet.room(subject.options().sheets(), true);
        return sheet(
                subject,
                gate,
                title,
                "",
                List.of(),
                Column.of(subject.said().blocks(blocks), room.width()).at(new Point(room.minX(), room.maxY() - 0.05)));
    }

    private static List<Block> welding(PacketSubject subject, SlidePaper gate) {
        Leaf leaf = gate.leaf();
        boolean spliced =
                leaf.members().stream().anyMatch(member -> Sticks.pieces(member).size() > 1);
        List<String> steps = new ArrayList<>();
        steps.add(
                "Level blocks under the whole length, outside face up, as on the shop drawing. Drill every hole first.");
        if (spliced)
            steps.add("Splice the rails first, over a backing, full penetration all round; straight within "
                    + subject.within(1) + " over the splice, then ground flush.");
        steps.add("Uprights between both rails, square; tack nose and tail first, check both diagonals to "
                + subject.within(2) + ", then the others.");
        steps.add("Fit and tack the braces to their points. Check that both rails are straight by a string.");
        steps.add(
                "Weld from the middle out, one joint above, then one below, ends last. Turn the leaf over and weld the"
                        + " other face in the same order. Let each cool before the next.");
        steps.add("Grind flush where the list says so; where wheels run, no weld and no spatter is left on the tube.");
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, "In this order"));
        blocks.add(new Block.TickList(steps, true));
        blocks.add(
                new Block.Note(
                        "Order and fit-up: common practice, no source. Joints are counted two to an upright from the end of the tail on, the lower first."));
        blocks.add(new Block.Heading(2, "Welds"));
        blocks.add(WeldTable.brief(subject, leaf));
        return blocks;
    }

    private static Sheet sheet(
            PacketSubject subject,
            SlidePaper gate,
            String title,
            String scale,
            List<Viewport> views,
            List<? extends plumbleaf.documents.drawing.Mark> loose) {
        return new Sheet(
                "Gate " + gate.id() + ", " + title.toLowerCase(java.util.Locale.ROOT),
                subject.options().sheets(),
                true,
                subject.block(gate, title, scale, cautions(gate)),
                views,
                List.copyOf(loose));
    }

    private static List<String> cautions(SlidePaper gate) {
        return List.of(
                "The leaf weighs "
                        + DecimalText.whole(gate.leaf().weight().wet().pounds())
                        + " lb wet and falls over off its rollers: lift it with a machine, prop it on both sides until rollers and"
                        + " stops are bolted.",
                "Hands out of rollers and posts while it moves.");
    }

    private static List<Block> notes(PacketSubject subject, SlidePaper gate) {
        List<Block> notes = new ArrayList<>();
        notes.add(new Block.Heading(2, "Setting"));
        notes.add(new Block.TickList(SlideSteps.setting(subject, gate), true));
        gate.carried().ifPresent(carried -> {
            notes.add(new Block.Heading(2, "What it puts on its rollers"));
            notes.add(SlideSteps.forces(carried));
            notes.add(new Block.Note(
                    "Pressing down; with a minus the leaf lifts, and the wheels over the tube hold it."));
        });
        return notes;
    }
}
