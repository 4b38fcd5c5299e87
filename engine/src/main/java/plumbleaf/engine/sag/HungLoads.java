package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.wind.LeafWind;

/**
 * What acts on a hung gate besides its own weight. Winds are net pressures on the gross outline of the leaf, W at strength level; heights of
 * their resultants are above grade at the pin.
 *
 * @param person weight that may hang on the latch edge
 * @param shut wind on the closed leaf, whichever way it blows
 * @param open wind on the leaf that stands open; its resultant is taken off the middle away from the hinges
 * @param serviceGust on the closed leaf, in which the latch must stay engaged
 * @param onHingePost from the fence beside it
 * @param onLatchPost from the fence beside it
 * @param ice where the job asks for it
 * @param onIce wind on the iced leaf, shut or open; calm where there is no ice
 * @param fenceOnIce what part of the design wind's push that wind gives the fence beside the posts
 */
public record HungLoads(
        Force person,
        LeafWind shut,
        LeafWind open,
        LeafWind serviceGust,
        List<PostPush> onHingePost,
        List<PostPush> onLatchPost,
        IceCoat ice,
        LeafWind onIce,
        double fenceOnIce) {
    private static final LeafWind CALM = new LeafWind(Pressure.ZERO, Length.ZERO, Length.ZERO, "calm");

    public HungLoads {
        onHingePost = List.copyOf(onHingePost);
        onLatchPost = List.copyOf(onLatchPost);
    }

    /** Without ice. */
    public HungLoads(
            Force person,
            LeafWind shut,
            LeafWind open,
            LeafWind serviceGust,
            List<PostPush> onHingePost,
            List<PostPush> onLatchPost) {
        this(person, shut, open, serviceGust, onHingePost, onLatchPost, IceCoat.NONE, CALM, 0);
    }

    /** Share of the design wind's push on the fence that counts in a combination. */
    public double fenceShare(Combination combination) {
        return combination.wind() * (combination.hasWindOnIce() ? fenceOnIce : 1);
    }

    /** The wind of a combination on the leaf. */
    public LeafWind blowing(Combination combination, LeafState state) {
        if (combination.hasWindOnIce()) return onIce;
        return state == LeafState.CLOSED ? shut : open;
    }

    /** A person and nothing else. */
    public static HungLoads person(Force person) {
        return new HungLoads(person, CALM, CALM, CALM, List.of(), List.of());
    }
}
