package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.frame.Vector;

/** The nodes along one member of the leaf, from its hinge or lower end, in the leaf's axes. */
final class Chain {
    /** Nearer than this, two nodes are one: it moves nothing, since loads and links keep their own places, and spares the frame slivers. */
    private static final double SAME_NODE_IN = 0.05;

    record Stop(String node, Vector at) {}

    /** From one node to the next, with the name of the frame's member there. */
    record Piece(String member, Stop from, Stop to) {
        double lengthIn() {
            return to.at().minus(from.at()).length();
        }
    }

    final plumbleaf.engine.gate.Member member;
    private final List<Stop> stops = new ArrayList<>();
    private final Vector begin;
    private final Vector direction;

    Chain(plumbleaf.engine.gate.Member member) {
        this.member = member;
        this.begin = vector(member.from());
        this.direction = vector(member.to()).minus(begin).unit();
    }

    /** A node at a joint. */
    void add(String node, Vector at) {
        stops.add(new Stop(node, at));
        stops.sort(Comparator.comparingDouble(stop -> direction.dot(stop.at().minus(begin))));
    }

    /** A node on the centreline nearest to a place, or the one that stands there already. */
    Stop split(String node, Vector near) {
        for (Stop stop : stops) if (stop.at().minus(near).length() < SAME_NODE_IN) return stop;
        Vector on = begin.plus(direction.times(direction.dot(near.minus(begin))));
        for (Stop stop : stops) if (stop.at().minus(on).length() < SAME_NODE_IN) return stop;
        add(node, on);
        return new Stop(node, on);
    }

    /** Cuts it into at least this many pieces of at most an even length each. */
    void cutInto(int pieces) {
        double most = lengthIn() / pieces;
        for (Piece piece : pieces()) {
            int cuts = (int) Math.ceil(piece.lengthIn() / most - 1e-9);
            for (int i = 1; i < cuts; i++)
                add(
                        piece.member() + " cut " + i,
                        piece.from()
                                .at()
                                .plus(piece.to().at().minus(piece.from().at()).times(i / (double) cuts)));
        }
    }

    List<Stop> stops() {
        return List.copyOf(stops);
    }

    Stop first() {
        return stops.get(0);
    }

    Stop last() {
        return stops.get(stops.size() - 1);
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < stops.size(); i++)
            pieces.add(new Piece(member.id() + "/" + (i + 1), stops.get(i), stops.get(i + 1)));
        return pieces;
    }

    double lengthIn() {
        double sum = 0;
        for (Piece piece : pieces()) sum += piece.lengthIn();
        return sum;
    }

    /** The point of the centreline at r. For rails and braces. */
    Vector atRadius(double rIn) {
        return begin.plus(direction.times((rIn - begin.x()) / direction.x()));
    }

    static Vector vector(plumbleaf.engine.gate.Place place) {
        return new Vector(place.r().inches(), place.n().inches(), place.z().inches());
    }
}
