package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;

/**
 * A board of trim across a leaf, from edge to edge, its ends plumb. Check: LeafTrimTest.
 *
 * @param use {@code cap}, {@code fascia} or {@code kick}
 * @param rail id of the rail that carries it
 * @param middle of its length and of its section
 * @param length along it
 * @param longPoint overall along it
 * @param endFromSquare of both ends, parallel
 * @param grade from hinge to latch, + up
 * @param tall plumb height that is seen of it
 */
public record LeafTrim(
        String use,
        Board board,
        String rail,
        Place middle,
        Length length,
        Length longPoint,
        Angle endFromSquare,
        Slope grade,
        Length tall,
        Force wet,
        Force dry) {
    /** Two screws every 16 in. and two at its end. Common practice, no source. */
    private static final double SCREW_SPACING_IN = 16;

    public int screws() {
        return 2 * ((int) Math.ceil(length.inches() / SCREW_SPACING_IN - 1e-9) + 1);
    }

    /** Its corners in the plane of the leaf: lower hinge, lower latch, upper latch, upper hinge. */
    public List<Place> corners() {
        double run = length.inches() / 2 * StrictMath.cos(endFromSquare.radians());
        double rise = grade.ratio() * run;
        double half = tall.inches() / 2;
        double r = middle.r().inches();
        double z = middle.z().inches();
        return List.of(
                Place.inPlane(r - run, z - rise - half),
                Place.inPlane(r + run, z + rise - half),
                Place.inPlane(r + run, z + rise + half),
                Place.inPlane(r - run, z - rise + half));
    }

    RailLoad load(Outline outline) {
        return new RailLoad(rail, outline.hingeEdge(), outline.latchEdge(), middle.n(), wet, dry);
    }

    /**
     * All of a leaf.
     *
     * @param rails from the lowest up
     * @param faceIn n of the boards' outer face, away from the frame
     * @param backIn half the frame's thickness, which the cap covers too
     */
    static List<LeafTrim> of(Outline outline, Cladding.Wood wood, List<Member> rails, double faceIn, double backIn) {
        Trimming trim = wood.trim();
        double side = CladdingFaces.side(wood);
        String top = rails.get(rails.size() - 1).id();
        String foot = rails.get(0).id();
        double middle = (outline.hingeEdge().inches() + outline.latchEdge().inches()) / 2;
        double high = outline.crestIn(middle) - trim.capThickness().inches();
        double low = outline.infillBottomIn(middle);
        List<LeafTrim> pieces = new ArrayList<>();
        trim.cap().ifPresent(is -> {
            double front = faceIn + trim.onFace().inches();
            double z = high + is.board().thickness().inches() / 2;
            pieces.add(piece(outline, "cap", is, top, side * (front - backIn) / 2, z, outline.top(), true));
        });
        trim.fascia().ifPresent(is -> {
            double n = side * (faceIn + is.board().thickness().inches() / 2);
            double z = high - is.board().width().inches() / 2 * plumb(outline.top());
            pieces.add(piece(outline, "fascia", is, top, n, z, outline.top(), false));
        });
        trim.kick().ifPresent(is -> {
            double n = side * (faceIn + is.board().thickness().inches() / 2);
            double z = low + is.board().width().inches() / 2 * plumb(outline.bottom());
            pieces.add(piece(outline, "kick", is, foot, n, z, outline.bottom(), false));
        });
        return pieces;
    }

    /** Plumb over square to a board that rises so. */
    private static double plumb(Slope grade) {
        return Math.sqrt(1 + grade.ratio() * grade.ratio());
    }

    private static LeafTrim piece(
            Outline outline, String use, Trimming.Of of, String rail, double n, double z, Slope grade, boolean flat) {
        Board board = of.board();
        double seen = flat ? board.thickness().inches() : board.width().inches();
        double length = outline.width().inches() * plumb(grade);
        double volume = length * board.areaIn2();
        double middle = (outline.hingeEdge().inches() + outline.latchEdge().inches()) / 2;
        return new LeafTrim(
                use,
                board,
                rail,
                Place.at(middle, n, z),
                Length.inches(length),
                Length.inches(length + seen * Math.abs(grade.ratio())),
                Angle.radians(Math.abs(grade.angle().radians())),
                grade,
                Length.inches(seen * (flat ? 1 : plumb(grade))),
                Infill.weight(volume, of.wood().densityAt(Moisture.WET)),
                Infill.weight(volume, of.wood().densityAt(Moisture.DRY)));
    }
}
