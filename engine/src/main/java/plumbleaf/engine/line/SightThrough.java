package plumbleaf.engine.line;

import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Offset;

/** Whether one sees through a row of boards. */
final class SightThrough {
    private SightThrough() {}

    /**
     * Least angle from square at which one sees through. Boards with a gap between them: 0. Boards in two layers that touch: never, 90 degrees, while they lap.
     * Boards on both faces of rails {@code d} thick that lap by {@code l} as one looks square: {@code atan(l/d)}. Geometry. Check: LyingRowTest.
     *
     * @param gap between boards as one looks square, negative where they lap
     */
    static Angle of(Boarding boards, Offset gap) {
        double lap = -gap.inches();
        if (lap < 0) return Angle.ZERO;
        if (!boards.bothSides()) return Angle.degrees(90);
        return new Angle(StrictMath.atan2(lap, boards.railThickness().inches()));
    }
}
