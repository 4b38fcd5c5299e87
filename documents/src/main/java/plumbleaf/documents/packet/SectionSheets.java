package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.view.InfillLayout;
import plumbleaf.documents.view.LeafSections;

/** How a leaf is made where it is cut through, and what its frame carries where that goes. */
final class SectionSheets {
    private SectionSheets() {}

    private record View(String title, Function<Scale, Drawing> drawn) {}

    static List<Sheet> of(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        int across = GateSheets.isSmall(subject) ? 1 : 2;
        double wide = room.width() / across;
        double high = room.height() / 2;
        List<View> views = views(gate);
        List<Sheet> sheets = new ArrayList<>();
        List<Viewport> viewports = new ArrayList<>();
        for (int i = 0; i < views.size(); i++) {
            View view = views.get(i);
            double x = room.minX() + viewports.size() % across * wide;
            int row = viewports.size() / across;
            double top = room.maxY() - row * high;
            Drawing cut = Scale.fitted(subject.units(), view.drawn(), wide - 0.3, high - Viewport.TITLE_IN - 0.2);
            viewports.add(Viewport.centred(cut, new Box(x, top - high, x + wide, top), view.title()));
            if (viewports.size() < 2 * across && i < views.size() - 1) continue;
            sheets.add(GateSheets.sheet(
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

    private static List<View> views(GatePaper gate) {
        List<View> views = new ArrayList<>();
        views.add(new View(
                "X: upright through a rail, looking left", scale -> LeafSections.infill(gate.subject(), scale)));
        views.add(new View("Y: level at the latch", scale -> LeafSections.latchSide(gate.subject(), scale)));
        views.add(new View("Z: level at a hinge", scale -> LeafSections.hingeSide(gate.subject(), scale)));
        if (!gate.leaf().pickets().isEmpty() || !gate.leaf().panels().isEmpty())
            views.add(new View(
                    InfillLayout.title(gate.leaf()) + " from outside, heights above A",
                    scale -> InfillLayout.of(gate.subject(), scale)));
        return views;
    }
}
