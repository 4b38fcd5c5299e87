package plumbleaf.engine.pricing;

import plumbleaf.engine.money.Money;

/** A payment and when it falls due. */
public record Payment(String when, Money amount) {}
