package plumbleaf.engine.design;

import java.util.Comparator;
import plumbleaf.engine.quantity.Ties;

/**
 * A link of the load path and how much of it is used: 1 is all.
 *
 * @param inCase the case that uses it most
 * @param work how it was worked out
 */
public record LinkUse(String link, String part, double utilisation, String inCase, LinkWork work) {
    /** Those that are used alike by part. */
    static final Comparator<LinkUse> WEAKEST_FIRST = Comparator.comparingDouble(
                    (LinkUse link) -> Ties.inOrder(link.utilisation()))
            .reversed()
            .thenComparing(LinkUse::part);
}
