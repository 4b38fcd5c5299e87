package plumbleaf.engine.job;

/**
 * What may be met and is in the price up to a number: bad holes, extra feet of depth. What is met beyond it is charged by the unit price.
 *
 * @param charge id of a charge that the price book prices by allowance
 * @param count how many are in the price
 * @param why how the number was come to; may be empty
 */
public record Allowance(String charge, double count, String why) {}
