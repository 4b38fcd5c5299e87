/**
 * Pure calculation for fences and gates on sloping ground. Packages are listed in the order in which they may import one
 * another: quantity, money, finding, geometry, simplex, frame, bars, material, section, catalogue, ground, support, job,
 * line, gate, wind, action, footing, strength, sag, rule, takeoff, labour, pricing, schedule, choose, design.
 */
@NullMarked
package plumbleaf.engine;

import org.jspecify.annotations.NullMarked;
