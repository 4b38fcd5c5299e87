package plumbleaf.engine.sag;

import plumbleaf.engine.gate.SlidePlan;

/** A slide leaf on the posts that hold it: the front rollers at the opening, the rear ones under its tail, the receiver at its nose. */
public record SlideGate(SlidePlan plan, SlidePost front, SlidePost rear, SlidePost receiver) {}
