package plumbleaf.engine.design;

import plumbleaf.engine.job.OfferOption;

/**
 * An option, designed and priced like the job itself.
 *
 * @param difference from the job itself
 */
public record Offered(OfferOption option, Design design, Difference difference) {}
