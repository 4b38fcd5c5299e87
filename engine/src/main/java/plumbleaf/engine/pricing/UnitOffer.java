package plumbleaf.engine.pricing;

import plumbleaf.engine.money.Money;

/**
 * What one more of something costs the customer, should it be met: a rock hole, a foot of extra depth. With tax.
 *
 * @param included how many are in the price already
 */
public record UnitOffer(String charge, String name, double included, Money each) {}
