package plumbleaf.engine.ground;

import plumbleaf.engine.geometry.SpacePoint;

/** One straight piece of a break line. */
public record BreakEdge(SpacePoint from, SpacePoint to) {}
