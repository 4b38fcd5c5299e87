package plumbleaf.engine.choose;

import plumbleaf.engine.money.Money;

/**
 * A build that could be made.
 *
 * @param id its parts in a fixed order, which also breaks ties of price
 * @param price what it costs with everything that differs between builds: material, labor, trips, finish
 */
public record Candidate<B>(String id, B build, Money price) {}
