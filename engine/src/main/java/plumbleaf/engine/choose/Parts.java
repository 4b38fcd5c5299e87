package plumbleaf.engine.choose;

import java.util.List;

/**
 * One part that builds are put together from, with all that it may be put on: every pair is a build, and costs what both cost.
 *
 * @param ons in order of price and then of id; no part of a build but these two differs
 */
public record Parts<A, B>(Candidate<A> one, List<Candidate<B>> ons) {
    public Parts {
        ons = List.copyOf(ons);
    }
}
