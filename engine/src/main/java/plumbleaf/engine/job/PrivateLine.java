package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * A buried line that no locator marks.
 *
 * @param kind what it is
 * @param run that it crosses
 * @param width of the pipe or cable itself; zero where nobody said
 * @param tolerance how wide to stay away beyond each of its sides
 */
public record PrivateLine(String kind, String run, Length station, Length width, Length tolerance) {
    /** From its middle to where a machine may dig: half of it and the tolerance. Source: Common Ground Alliance, best practice 5.19. Check: OtherPostsCheck (CX38). */
    public Length byHand() {
        return tolerance.plus(width.times(0.5));
    }
}
