package plumbleaf.engine.frame;

import java.util.List;

/** The loads of one case on one member, in the member's own axes and within its length. */
record MemberLoads(List<Spread> spreads, List<Point> points) {
    static final MemberLoads NONE = new MemberLoads(List.of(), List.of());

    MemberLoads {
        spreads = List.copyOf(spreads);
        points = List.copyOf(points);
    }

    record Spread(double fromIn, double toIn, Vector perInchLb, Vector couplePerInchLb) {}

    record Point(double atIn, Vector forceLb, Vector momentLbIn) {}
}
