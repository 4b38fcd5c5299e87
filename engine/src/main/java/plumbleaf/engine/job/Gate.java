package plumbleaf.engine.job;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A gate on a run.
 *
 * @param station of the post face nearer the run's start
 * @param opening clear distance between the post faces
 * @param asSet the opening as measured between the standing posts; empty until it was
 * @param ground what is done to the ground at it
 */
public record Gate(
        String id,
        GateKind kind,
        String run,
        Length station,
        Length opening,
        LeafSpec leaf,
        PostSpec hingePost,
        PostSpec latchPost,
        HingeSpec hinges,
        LatchSpec latch,
        GateLoads loads,
        List<AsSet> asSet,
        Release release,
        List<Obstacle> obstacles,
        GateGround ground) {
    public Gate {
        asSet = List.copyOf(asSet);
        obstacles = List.copyOf(obstacles);
    }

    /** On ground that is left as it is. */
    public Gate(
            String id,
            GateKind kind,
            String run,
            Length station,
            Length opening,
            LeafSpec leaf,
            PostSpec hingePost,
            PostSpec latchPost,
            HingeSpec hinges,
            LatchSpec latch,
            GateLoads loads,
            List<AsSet> asSet,
            Release release,
            List<Obstacle> obstacles) {
        this(
                id,
                kind,
                run,
                station,
                opening,
                leaf,
                hingePost,
                latchPost,
                hinges,
                latch,
                loads,
                asSet,
                release,
                obstacles,
                GateGround.AS_IT_IS);
    }

    /** The last readings between its posts: the leaf is fitted to them. */
    public Optional<AsSet> lastSet() {
        return asSet.isEmpty() ? Optional.empty() : Optional.of(asSet.get(asSet.size() - 1));
    }

    /** How far to the left of its run's line it stands, as one walks along the run: away from the side it swings to, away from the inside where nobody said. */
    public Offset leftOfLine(Side outside) {
        Offset back = ground.setBack().asOffset();
        if (ground.setBack().isZero()) return Offset.ZERO;
        SwingWay way = kind.match(
                swing -> swing.swing().or(SwingWay.IN),
                pair -> pair.swing().or(SwingWay.IN),
                slide -> SwingWay.IN,
                flagged -> SwingWay.IN);
        boolean left = (way == SwingWay.IN) == (outside == Side.LEFT);
        return left ? back : back.negated();
    }

    public Gate withKind(GateKind changed) {
        return new Gate(
                id, changed, run, station, opening, leaf, hingePost, latchPost, hinges, latch, loads, asSet, release,
                obstacles, ground);
    }

    public Gate withStation(Length changed) {
        return new Gate(
                id, kind, run, changed, opening, leaf, hingePost, latchPost, hinges, latch, loads, asSet, release,
                obstacles, ground);
    }

    public Gate withLeaf(LeafSpec changed) {
        return new Gate(
                id, kind, run, station, opening, changed, hingePost, latchPost, hinges, latch, loads, asSet, release,
                obstacles, ground);
    }

    public Gate withHinges(HingeSpec changed) {
        return new Gate(
                id, kind, run, station, opening, leaf, hingePost, latchPost, changed, latch, loads, asSet, release,
                obstacles, ground);
    }

    public Gate withGround(GateGround changed) {
        return new Gate(
                id, kind, run, station, opening, leaf, hingePost, latchPost, hinges, latch, loads, asSet, release,
                obstacles, changed);
    }
}
