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
import plumbleaf.documents.view.RailSection;

/** How a leaf is made where it is cut through, and what its frame carries where that goes. */
final class SectionSheets {
    /** Even first: of equals the first is kept. */
    private static final List<Double> SHARES = List.of(0.5, 0.44, 0.56, 0.38, 0.62);

    private SectionSheets() {}

    private record View(String title, Function<Scale, Drawing> drawn) {}

    static List<Sheet> of(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        int across = GateSheets.isSmall(subject) ? 1 : 2;
        List<View> views = views(gate);
        List<Sheet> sheets = new ArrayList<>();
        for (int from = 0; from < views.size(); from += 2 * across)
            sheets.add(GateSheets.sheet(
                    subject,
                    gate,
                    "Sections",
                    "as shown",
                    List.of("Deburr every hole and edge before the leaf is coated."),
                    shared(subject, views.subList(from, Math.min(views.size(), from + 2 * across)), room, across),
                    List.of()));
        return sheets;
    }

    /** The sheet is shared out so that its drawings come out as large as they can together, none smaller than in an even share. */
    private static List<Viewport> shared(PacketSubject subject, List<View> views, Box room, int across) {
        List<Viewport> even = set(subject, views, room, across == 1 ? 1 : SHARES.get(0), SHARES.get(0));
        List<Viewport> best = even;
        for (double left : across == 1 ? List.of(1.0) : SHARES)
            for (double upper : SHARES) {
                List<Viewport> other = set(subject, views, room, left, upper);
                if (noneSmaller(other, even) && smallness(other) < smallness(best) - 1e-9) best = other;
            }
        return best;
    }

    private static boolean noneSmaller(List<Viewport> one, List<Viewport> other) {
        for (int i = 0; i < one.size(); i++) if (per(one.get(i)) > per(other.get(i)) + 1e-9) return false;
        return true;
    }

    private static double smallness(List<Viewport> viewports) {
        return viewports.stream().mapToDouble(view -> StrictMath.log(per(view))).sum();
    }

    private static double per(Viewport viewport) {
        return viewport.drawing().scale().realPerPaper();
    }

    /**
     * @param left  share of the width that is the left column's
     * @param upper share of the height that is the upper row's
     */
    private static List<Viewport> set(PacketSubject subject, List<View> views, Box room, double left, double upper) {
        double middle = room.minX() + room.width() * left;
        double halfway = room.maxY() - room.height() * upper;
        int across = left < 1 ? 2 : 1;
        List<Viewport> viewports = new ArrayList<>();
        for (int i = 0; i < views.size(); i++) {
            boolean right = i % across == 1;
            boolean lower = i / across == 1;
            Box place = new Box(
                    right ? middle : room.minX(),
                    lower ? room.minY() : halfway,
                    right ? room.maxX() : middle,
                    lower ? halfway : room.maxY());
            Drawing cut = Scale.fitted(
                    subject.units(),
                    views.get(i).drawn(),
                    place.width() - 0.3,
                    place.height() - Viewport.TITLE_IN - 0.2);
            viewports.add(Viewport.centred(cut, place, views.get(i).title()));
        }
        return List.copyOf(viewports);
    }

    private static List<View> views(GatePaper gate) {
        List<View> views = new ArrayList<>();
        views.add(new View("X: upright through a rail, looking left", scale -> RailSection.of(gate.subject(), scale)));
        views.add(new View("Y: level at the latch", scale -> LeafSections.latchSide(gate.subject(), scale)));
        views.add(new View("Z: level at a hinge", scale -> LeafSections.hingeSide(gate.subject(), scale)));
        if (!gate.leaf().pickets().isEmpty() || !gate.leaf().panels().isEmpty())
            views.add(new View(
                    InfillLayout.title(gate.leaf()) + " from outside, heights above A",
                    scale -> InfillLayout.of(gate.subject(), scale)));
        return views;
    }
}
