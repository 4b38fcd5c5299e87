package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.quantity.Offset;

/** One build of a search, and the search it belongs to: there is one for each way the gate may hang. */
record TriedBuild(GateSearch search, LeafPick leaf, FootPick foot) {
    PickedGate build() {
        return new PickedGate(
                leaf.frame(),
                leaf.bracing(),
                leaf.joint(),
                leaf.bracket(),
                foot.hingePost(),
                foot.latchPost(),
                foot.hole(),
                search.hanging());
    }

    List<Finding> findings() {
        return search.judge(this);
    }

    /** What comes after hanging in soft soil; without end where that is not worked out. */
    double afterIn() {
        return search.after(this).map(Offset::inches).orElse(Double.POSITIVE_INFINITY);
    }

    Predicate<FootPick> mayDropWithin(double limitIn) {
        return search.mayDropWithin(leaf, limitIn);
    }

    /** One build of a search from a leaf and its feet. */
    static TriedBuild of(TriedBuild leaf, FootPick foot) {
        return new TriedBuild(leaf.search(), leaf.leaf(), foot);
    }

    Optional<Offset> after() {
        return search.after(this);
    }
}
