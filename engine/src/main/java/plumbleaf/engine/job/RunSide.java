package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * A side of a run that is built in another way than the rest: designed on its own basis, on posts of its own, in holes of its own, so that what one side asks for
 * is not built all round.
 *
 * @param basis where it differs from the run's
 * @param post section of its own posts, where it differs
 * @param hole diameter of their holes, where it differs
 * @param depth of their holes, where the job fixes it
 * @param maxBay greatest spacing of the posts there, where rails or wind ask for less than the run's
 */
public record RunSide(
        Length from,
        Length to,
        Stated<DesignBasis> basis,
        Stated<String> post,
        Stated<Length> hole,
        Stated<Length> depth,
        Stated<Length> maxBay) {
    /** Built as the rest. */
    public static RunSide open(Length from, Length to) {
        return new RunSide(from, to, Stated.open(), Stated.open(), Stated.open(), Stated.open(), Stated.open());
    }

    public boolean holds(double stationIn) {
        return from.inches() <= stationIn && stationIn <= to.inches();
    }

    /** As much of it as lies between two stations of it. */
    RunSide between(Length first, Length last) {
        return new RunSide(first, last, basis, post, hole, depth, maxBay);
    }

    public RunSide withBasis(DesignBasis own) {
        return new RunSide(from, to, Stated.of(own), post, hole, depth, maxBay);
    }

    public RunSide withPost(String own) {
        return new RunSide(from, to, basis, Stated.of(own), hole, depth, maxBay);
    }

    public RunSide withDepth(Length own) {
        return new RunSide(from, to, basis, post, hole, Stated.of(own), maxBay);
    }

    public RunSide withMaxBay(Length own) {
        return new RunSide(from, to, basis, post, hole, depth, Stated.of(own));
    }
}
