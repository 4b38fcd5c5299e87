package plumbleaf.engine.design;

/**
 * How a link was worked out, for the calculation book.
 *
 * @param formula as the source has it
 * @param numbers put in, of the case that governs
 * @param clause where it comes from
 */
public record LinkWork(String formula, String numbers, String clause) {}
