package plumbleaf.engine.line;

import java.util.Optional;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.support.Support;

/**
 * What a line knows of a gate: where it stands, what its posts are and stand on, how high they reach. Nothing else of a gate moves a post, so that a line laid out for one leaf
 * is the line for any other in the same place.
 *
 * @param station of the post face nearer the run's start
 * @param opening clear distance between the post faces
 * @param first the post nearer the run's start
 * @param hole diameter of the holes of its posts
 * @param hingesOnFirst whether the leaf, of a pair the one on the left, hangs on the first post
 * @param left how far to the left of its run's line it stands
 * @param bottomGap under its leaf
 * @param infill how high its leaf is
 * @param rear of a slide gate, the rear roller post
 */
public record GatePlace(
        String id,
        String run,
        Length station,
        Length opening,
        On first,
        On second,
        Length hole,
        boolean hingesOnFirst,
        Offset left,
        Length bottomGap,
        Length infill,
        Optional<Rear> rear) {
    /** A post, {@code width} along the run. */
    public record On(Support support, Length width) {}

    /** @param behind the front roller post, between the axes */
    public record Rear(Length behind, Support support) {}

    /**
     * @param first width of the post nearer the run's start
     * @param second width of the other
     * @param hole diameter of their holes; zero where nothing is dug
     */
    public static GatePlace of(Gate gate, Run run, Length first, Length second, Length hole) {
        boolean hingesOnFirst = hingesOnFirst(gate, run);
        Support hinge = gate.hingePost().support();
        Support latch = gate.latchPost().support();
        Length hingePost = hingesOnFirst ? first : second;
        Optional<SlideSpec> slide = gate.kind()
                .match(
                        swing -> Optional.<SlideSpec>empty(),
                        pair -> Optional.<SlideSpec>empty(),
                        is -> Optional.of(is.spec()),
                        flagged -> Optional.<SlideSpec>empty());
        return new GatePlace(
                gate.id(),
                gate.run(),
                gate.station(),
                gate.opening(),
                new On(hingesOnFirst ? hinge : latch, first),
                new On(hingesOnFirst ? latch : hinge, second),
                hole,
                hingesOnFirst,
                gate.leftOfLine(run.outside()),
                gate.leaf().bottomGap(),
                gate.leaf().infill(),
                slide.map(spec -> new Rear(spec.spacingOn(hingePost), spec.rearPost())));
    }

    /** From outside a run with its outside on the right, stations grow from left to right. */
    private static boolean hingesOnFirst(Gate gate, Run run) {
        Side firstSide = run.outside() == Side.RIGHT ? Side.LEFT : Side.RIGHT;
        return gate.kind()
                .match(
                        swing -> swing.hinge().or(firstSide) == firstSide,
                        pair -> firstSide == Side.LEFT,
                        slide -> slide.opensTo() == firstSide,
                        flagged -> true);
    }

    /** Where a leaf that slides past its own fence leaves the opening: it is level, and set out from the grade there. */
    Optional<Offset> slidesFrom() {
        return rear.map(is -> (hingesOnFirst ? station : station.plus(opening)).asOffset());
    }
}
