package plumbleaf.engine.sag;

import plumbleaf.engine.frame.FrameSolution;

/** A gate's frame as it is under some cases, slack rods taken out, and its solution for them. */
record Hanging(GateFrame frame, FrameSolution solved) {}
