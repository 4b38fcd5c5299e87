/**
 * What has to be bought: every part of fence, gates and footings, with the post, bay or member that causes it, the waste allowed, and how it is rounded up to
 * what is sold. Asks for cut plans through {@code bars}; learns what is sold, and for how much, through {@link plumbleaf.engine.takeoff.Goods}. Must not know
 * labor, overhead or price to the customer.
 *
 * <p>Read {@link plumbleaf.engine.takeoff.Needs}, then where needs come from ({@link plumbleaf.engine.takeoff.FenceNeeds},
 * {@link plumbleaf.engine.takeoff.GateNeeds}), then {@link plumbleaf.engine.takeoff.Takeoffs}.
 */
@NullMarked
package plumbleaf.engine.takeoff;

import org.jspecify.annotations.NullMarked;
