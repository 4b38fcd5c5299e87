/**
 * Rules that are not about strength: pool barriers, access, permits, powered gates, and what to say before people dig, weld and lift. Each finding names its
 * clause, and that local code governs. Knows measured sizes; must not know how they came about.
 *
 * <p>Read {@link plumbleaf.engine.rule.RuleTable}, {@link plumbleaf.engine.rule.PoolFence}, {@link plumbleaf.engine.rule.PoolGate},
 * {@link plumbleaf.engine.rule.AccessGate}, {@link plumbleaf.engine.rule.SiteCautions}.
 */
@NullMarked
package plumbleaf.engine.rule;

import org.jspecify.annotations.NullMarked;
