package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.view.Site;
import plumbleaf.documents.view.SitePlan;

/** The site from above: on one sheet, and where that is too small to name every post, piece by piece on further ones. */
public final class SiteSheet {
    private SiteSheet() {}

    public static Drawing drawing(PacketSubject subject) {
        return fitted(subject, List.of());
    }

    private static Drawing fitted(PacketSubject subject, List<SitePlan.Piece> pieces) {
        Box room = Sheet.room(subject.options().sheets(), true);
        return Scale.fitted(
                subject.units(),
                scale -> SitePlan.of(subject.site(), scale, pieces),
                room.width(),
                room.height() - Viewport.TITLE_IN);
    }

    public static List<Drawing> pages(PacketSubject subject) {
        Drawing plan = drawing(subject);
        if (!SitePlan.crowds(subject.site(), plan.scale()))
            return List.of(sheet(subject, List.of(centred(subject, plan, "Site plan, north up")))
                    .page("1 of 1"));
        return inPieces(subject);
    }

    private static List<Drawing> inPieces(PacketSubject subject) {
        Site site = subject.site();
        Scale near = SiteParts.scale(site);
        Drawing legend = SitePlan.legend(near, site.job().display());
        Box all = Sheet.room(subject.options().sheets(), true);
        Box room = new Box(all.minX(), all.minY() + legend.paperHeightIn(), all.maxX(), all.maxY());
        Viewport corner = new Viewport(legend, new Point(all.maxX() - legend.paperWidthIn(), all.minY()), "");
        List<SiteParts.Part> parts = SiteParts.of(site, near, room);
        List<List<Viewport>> sheets = Shelves.of(
                parts.stream().map(SiteParts.Part::drawing).toList(),
                parts.stream().map(SiteParts.Part::words).toList(),
                room);
        List<SitePlan.Piece> pieces = new ArrayList<>();
        for (SiteParts.Part part : parts)
            for (int i = 0; i < sheets.size(); i++)
                for (Viewport view : sheets.get(i))
                    if (view.drawing().equals(part.drawing()))
                        pieces.add(new SitePlan.Piece(part.window(), "sheet " + (i + 2)));
        int count = sheets.size() + 1;
        List<Drawing> pages = new ArrayList<>();
        Viewport whole = centred(subject, fitted(subject, pieces), "Site plan, north up: where each sheet lies");
        pages.add(sheet(subject, List.of(whole)).page("1 of " + count));
        for (List<Viewport> views : sheets) {
            List<Viewport> shown = new ArrayList<>(views);
            shown.add(corner);
            pages.add(sheet(subject, shown).page((pages.size() + 1) + " of " + count));
        }
        return pages;
    }

    private static Viewport centred(PacketSubject subject, Drawing plan, String title) {
        return Viewport.centred(plan, Sheet.room(subject.options().sheets(), true), title);
    }

    private static Sheet sheet(PacketSubject subject, List<Viewport> views) {
        List<String> cautions = new ArrayList<>(subject.tickets());
        cautions.add("Marks are not surveyed: who owns the line's truth is written in the proposal.");
        cautions.add("Private lines (irrigation, lighting, drains) are the owner's to show; no locator marks them.");
        return new Sheet(
                "Site plan",
                subject.options().sheets(),
                true,
                subject.block("Site plan", "", views.get(0).drawing().scale().words(), cautions),
                views,
                List.of());
    }
}
