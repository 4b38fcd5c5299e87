package plumbleaf.documents.drawing;

import java.util.List;

/** A filled arrowhead, three times as long as it is wide (ASME Y14.2, from memory). */
final class Arrow {
    static final double LONG_IN = 0.11;
    static final double HALF_WIDE_IN = 0.0185;

    private Arrow() {}

    /** Its tip at a place, pointing in a direction. */
    static Fill tip(Point tip, double directionRad, Scale scale, Look look) {
        Point foot = tip.towards(directionRad + Math.PI, scale.real(LONG_IN));
        double half = scale.real(HALF_WIDE_IN);
        return new Fill(
                List.of(
                        tip,
                        foot.towards(directionRad + Math.PI / 2, half),
                        foot.towards(directionRad - Math.PI / 2, half)),
                look);
    }
}
