package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Pressure;

/**
 * What acts on a hung gate besides its own weight.
 *
 * @param person weight that may hang on the latch edge
 * @param wind net pressure W on the whole outline of the leaf, at strength level, whichever way it blows
 * @param serviceGust net pressure of the gust in which the latch must stay engaged
 * @param onHingePost from the fence beside it
 * @param onLatchPost from the fence beside it
 */
public record HungLoads(
        Force person, Pressure wind, Pressure serviceGust, List<PostPush> onHingePost, List<PostPush> onLatchPost) {
    public HungLoads {
        onHingePost = List.copyOf(onHingePost);
        onLatchPost = List.copyOf(onLatchPost);
    }

    /** A person and nothing else. */
    public static HungLoads person(Force person) {
        return new HungLoads(person, Pressure.ZERO, Pressure.ZERO, List.of(), List.of());
    }
}
