package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Viewport;

/** Sets drawings on sheets in the order given, as books on shelves: beside one another while there is room, then under, then on the next sheet. */
final class Shelves {
    private static final double GAP_IN = 0.2;

    private final Box room;
    private final List<List<Viewport>> sheets = new ArrayList<>();
    private double x;
    private double top;
    private double shelf;

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
        double wide = drawing.paperWidthIn();
        double high = drawing.paperHeightIn() + Viewport.TITLE_IN;
        if (sheets.isEmpty()) newSheet();
        else if (x + wide > room.maxX() + 1e-9) nextShelf();
        // Also where the shelf is too low for this one: a new shelf has the same room below it, so only a new sheet
        // helps.
        if (top - high < room.minY() - 1e-9) newSheet();
        sheets.get(sheets.size() - 1).add(new Viewport(drawing, new Point(x, top - drawing.paperHeightIn()), title));
        x += wide + GAP_IN;
        shelf = Math.max(shelf, high);
    }

    private void nextShelf() {
        x = room.minX();
        top -= shelf + GAP_IN;
        shelf = 0;
    }

    private void newSheet() {
        sheets.add(new ArrayList<>());
        x = room.minX();
        top = room.maxY();
        shelf = 0;
    }
}
