package plumbleaf.engine.pricing;

import plumbleaf.engine.money.Money;

/** A tax as it is shown on the bill. */
public record TaxAmount(String name, Money amount) {}
