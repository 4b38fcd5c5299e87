package plumbleaf.engine.choose;

import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.money.Money;

/**
 * A build that will not do, and the worst thing that is wrong with it.
 *
 * @param because the worst finding
 */
public record Rejected(String id, Money price, Finding because) {}
