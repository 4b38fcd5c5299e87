package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * How one gets to the line.
 *
 * @param passage the narrowest place on the way; unsaid where nothing is in the way
 * @param machine what the digging machine needs to get through
 * @param carry from the truck to the middle of the work; zero where the truck stands beside it
 * @param arrival what the crew finds there
 */
public record Access(Stated<Length> passage, Length machine, Length carry, Arrival arrival) {
    /** What a walk-behind digger needs, about: common practice, no source. */
    public static final Length USUAL_MACHINE = Length.inches(36);

    /** Nothing in the way. */
    public static Access open() {
        return new Access(Stated.open(), USUAL_MACHINE, Length.ZERO, Arrival.UNSAID);
    }

    /** Whether no machine gets to the holes. */
    public boolean isByHand() {
        return passage.isSaid() && passage.or(machine).compareTo(machine) < 0;
    }
}
