package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * A side of a run that is built in another way than the rest: designed on its own basis, or on posts of its own, so that what one side asks for is not built all round.
 *
 * @param basis where it differs from the run's
 * @param post section of its own posts, where it differs
 */
public record RunSide(Length from, Length to, Stated<DesignBasis> basis, Stated<String> post) {
    public boolean holds(double stationIn) {
        return from.inches() <= stationIn && stationIn <= to.inches();
    }
}
