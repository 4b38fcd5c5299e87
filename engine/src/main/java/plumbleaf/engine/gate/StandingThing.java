package plumbleaf.engine.gate;

import plumbleaf.engine.geometry.PlanPoint;

/** Something that stands in or near a swing, where it stands. */
record StandingThing(String what, PlanPoint at) {}
