package plumbleaf.engine.sag;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Offset;

/**
 * The sag budget of a leaf under its wet weight, closed, in likely soil.
 *
 * @param total drop of the outline's free latch corner, + down: by the stiffness solution, slack added; the causes add up to it by virtual work
 * @param afterHangingSoft what comes after hanging in soft soil
 * @param person how a person on the latch edge moves the latch
 * @param gust how the service gust moves it
 * @param footingTurn of the hinge post at grade, + towards the latch
 * @param sixDeeper total with the footing six inches deeper; empty where nobody digs
 * @param hinges what they carry under it, from the lowest up; a leaf of a pair alone, before it meets the other
 * @param leafShares what each member of the leaf adds to its share of the drop; empty where a search did not ask
 * @param shape how every centreline moves
 * @param sway what its rods do, how far it twists and how fast it shakes
 * @param ice what ice does, where the job asks for it
 */
public record GateSag(
        Offset total,
        ByCause byCause,
        ByTime byTime,
        SoilDrops soil,
        Offset afterHangingSoft,
        LatchLive person,
        LatchLive gust,
        Angle footingTurn,
        Optional<Offset> sixDeeper,
        List<HingeForce> hinges,
        List<DropShare> leafShares,
        List<BentLine> shape,
        LeafSway sway,
        Optional<IceDrop> ice) {
    public GateSag {
        hinges = List.copyOf(hinges);
        leafShares = List.copyOf(leafShares);
        shape = List.copyOf(shape);
    }

    /** The larger of the two movements at the latch. */
    public LatchLive latchLive() {
        return gust.size().compareTo(person.size()) > 0 ? gust : person;
    }

    /** What the corner may fall when the blocks are pulled, in soft soil: what the limit of a good hang is held against. The leaf's own part is built into the jig. */
    public Offset releaseSoft() {
        return soil.soft().minus(byCause.leaf());
    }

    /** How far above its cambered place the corner is blocked while it is hung. */
    public Offset hangAllowance() {
        return byTime.atRelease();
    }
}
