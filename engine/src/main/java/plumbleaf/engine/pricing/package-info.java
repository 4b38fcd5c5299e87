/**
 * From cost to price: the price book, and the build-up with contingency, overhead, margin, tax and payments. Decimal arithmetic; lines round, totals add.
 *
 * <p>Read {@link plumbleaf.engine.pricing.PriceBook}, {@link plumbleaf.engine.pricing.Terms}, {@link plumbleaf.engine.pricing.Pricing},
 * {@link plumbleaf.engine.pricing.Price}.
 */
@NullMarked
package plumbleaf.engine.pricing;

import org.jspecify.annotations.NullMarked;
