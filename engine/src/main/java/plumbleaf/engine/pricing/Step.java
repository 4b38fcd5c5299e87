package plumbleaf.engine.pricing;

import plumbleaf.engine.money.Money;

/** One part of the price: where some of its dollars go. */
public record Step(String key, String words, Money amount) {}
