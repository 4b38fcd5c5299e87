package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.typeset.Column;
import plumbleaf.documents.view.SlideElevation;
import plumbleaf.documents.view.SlideSection;
import plumbleaf.documents.view.SlideWay;
import plumbleaf.engine.quantity.DecimalText;

/** The sheets of a slide gate: the whole leaf with its tail and its way from above, and a section at its rollers with how it is set. */
public final class SlideSheets {
    private static final double ELEVATION_SHARE = 0.62;
    private static final double SECTION_SHARE = 0.45;

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
        return List.of(
                whole(subject, gate).page("1 of 2"), section(subject, gate).page("2 of 2"));
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

    private static Sheet section(PacketSubject subject, SlidePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        double split = room.minX() + room.width() * SECTION_SHARE;
        Drawing section = Scale.fitted(
                subject.units(),
                scale -> SlideSection.of(gate.subject(), scale),
                split - room.minX() - 0.2,
                room.height() - Viewport.TITLE_IN - 0.1);
        Column notes = Column.of(subject.said().blocks(notes(subject, gate)), room.maxX() - split - 0.2);
        return sheet(
                subject,
                gate,
                "Section and setting",
                section.scale().words(),
                List.of(Viewport.centred(
                        section,
                        new Box(room.minX(), room.minY(), split - 0.1, room.maxY()),
                        "Section at the front rollers")),
                notes.at(new Point(split + 0.1, room.maxY() - 0.05)));
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
        });
        return notes;
    }
}
