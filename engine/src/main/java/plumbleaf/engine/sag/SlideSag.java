package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * How far the nose of a slide leaf drops, closed but not yet in its receiver, under its wet weight, in likely soil; + down.
 *
 * @param byCause adds up to the whole
 * @param camber what is built into the frame in the jig: the frame's own part
 * @param atSetting the rest: how far the nose is held high by the rear rollers when the leaf is set
 * @param rearLower how much lower than level the rear rollers are set for that
 * @param afterSetting wear of the wheels and what the ground gives later
 * @param softly the whole drop in soft soil
 * @param stiffly the same in stiff soil
 * @param person how far a person on the nose takes it down
 * @param across how far the service gust moves the nose across while nothing receives it
 * @param frameShares what each member of the leaf adds to its frame's part
 * @param tail drop of the tail's end of the open leaf
 */
public record SlideSag(
        ByPart byCause,
        Offset camber,
        Offset atSetting,
        Offset rearLower,
        Offset afterSetting,
        Offset softly,
        Offset stiffly,
        Offset person,
        Length across,
        List<DropShare> frameShares,
        Offset tail) {
    public SlideSag {
        frameShares = List.copyOf(frameShares);
    }

    /** Drop of the nose by what gives: the leaf's frame, the play of its rollers, the posts that carry them, their footings. */
    public record ByPart(Offset frame, Offset play, Offset posts, Offset footings) {
        public Offset total() {
            return frame.plus(play).plus(posts).plus(footings);
        }
    }

    public Offset total() {
        return byCause.total();
    }

    /** What the nose may be too low by when it comes to its receiver, once it was set level: what comes after, and a person on it. */
    public Offset low() {
        return afterSetting.plus(person);
    }
}
