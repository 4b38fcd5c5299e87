package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Moment;

/**
 * An adjustable corner bracket of a frame that is bolted together, as its maker describes it. What the maker does not say stays open, and an open
 * capacity is never a pass.
 *
 * @param play how far the joint turns freely before it holds
 * @param turnsUnder moment that turns the joint one degree, in the plane of the leaf
 * @param capacity moment it may carry
 */
public record Bracket(Stated<Angle> play, Stated<Moment> turnsUnder, Stated<Moment> capacity) {
    public static final Bracket UNKNOWN = new Bracket(Stated.open(), Stated.open(), Stated.open());

    /** Taken where the maker gives no play: judgement. */
    public static final Angle USUAL_PLAY = Angle.degrees(0.25);

    /** Taken where the maker gives no stiffness: judgement, about a twentieth of what a welded corner of light tube is held by its rail. */
    public static final Moment USUAL_TURN = Moment.poundInches(500);

    public Angle playOrUsual() {
        return play.or(USUAL_PLAY);
    }

    public double stiffnessLbInPerRad() {
        return turnsUnder.or(USUAL_TURN).poundInches() / (Math.PI / 180);
    }
}
