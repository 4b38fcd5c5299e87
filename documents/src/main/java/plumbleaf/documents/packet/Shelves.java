package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Viewport;

/** Sets drawings on as few sheets as it goes: each, in the order given, on the first sheet that has room for it, as high and then as far left as it fits. */
final class Shelves {
    private static final double GAP_IN = 0.2;

    private final Box room;
    private final List<List<Viewport>> sheets = new ArrayList<>();

    private Shelves(Box room) {
        this.room = room;
    }

    /** The drawings of each sheet; a drawing larger than the room has a sheet of its own. */
    static List<List<Viewport>> of(List<Drawing> drawings, List<String> titles, Box room) {
        Shelves shelves = new Shelves(room);
        for (int i = 0; i < drawings.size(); i++) shelves.put(drawings.get(i), titles.get(i));
        return shelves.sheets;
    }

    private void put(Drawing drawing, String title) {
        for (List<Viewport> sheet : sheets) {
            Optional<Point> free = free(sheet, drawing);
            if (free.isEmpty()) continue;
            sheet.add(new Viewport(drawing, free.get(), title));
            return;
        }
        Point corner = new Point(room.minX(), room.maxY() - drawing.paperHeightIn());
        sheets.add(new ArrayList<>(List.of(new Viewport(drawing, corner, title))));
    }

    /** Beside or under what stands there, where it covers none of it. */
    private Optional<Point> free(List<Viewport> sheet, Drawing drawing) {
        double wide = drawing.paperWidthIn();
        double high = drawing.paperHeightIn() + Viewport.TITLE_IN;
        List<Double> tops = new ArrayList<>(List.of(room.maxY()));
        List<Double> lefts = new ArrayList<>(List.of(room.minX()));
        for (Viewport other : sheet) {
            tops.add(covers(other).minY() - GAP_IN);
            lefts.add(covers(other).maxX() + GAP_IN);
        }
        tops.sort(Comparator.reverseOrder());
        lefts.sort(Comparator.naturalOrder());
        for (double top : tops)
            for (double left : lefts) {
                Box wanted = new Box(left, top - high, left + wide, top);
                boolean within = wanted.maxX() <= room.maxX() + 1e-9 && wanted.minY() >= room.minY() - 1e-9;
                Box kept = wanted.grown(GAP_IN / 2);
                if (within && sheet.stream().noneMatch(other -> kept.overlaps(covers(other))))
                    return Optional.of(new Point(left, top - drawing.paperHeightIn()));
            }
        return Optional.empty();
    }

    /** With its title. */
    private static Box covers(Viewport viewport) {
        Box box = viewport.covers();
        return new Box(box.minX(), box.minY() - Viewport.TITLE_IN, box.maxX(), box.maxY());
    }
}
