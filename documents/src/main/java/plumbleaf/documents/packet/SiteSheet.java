package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.view.SitePlan;

/** The site from above, on one sheet. */
public final class SiteSheet {
    private SiteSheet() {}

    public static Drawing drawing(PacketSubject subject) {
        Box room = Sheet.room(subject.options().sheets(), true);
        return Scale.fitted(
                scale -> SitePlan.of(
                        subject.job(),
                        subject.layout(),
                        subject.ground(),
                        subject.placedGates(),
                        subject.slidePlans(),
                        scale),
                room.width(),
                room.height() - Viewport.TITLE_IN);
    }

    public static List<Drawing> pages(PacketSubject subject) {
        Box room = Sheet.room(subject.options().sheets(), true);
        Drawing plan = drawing(subject);
        List<String> cautions = new ArrayList<>(subject.tickets());
        cautions.add("Marks are not surveyed: who owns the line's truth is written in the proposal.");
        cautions.add("Private lines (irrigation, lighting, drains) are the owner's to show; no locator marks them.");
        Sheet sheet = new Sheet(
                "Site plan",
                subject.options().sheets(),
                true,
                subject.block("Site plan", "", plan.scale().words(), cautions),
                List.of(Viewport.centred(plan, room, "Site plan, north up")),
                List.of());
        return List.of(sheet.page("1 of 1"));
    }
}
