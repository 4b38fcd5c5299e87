package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Density;

/** Density of one wood: wet at 28 % moisture, as hung, and dry at 9 %, as it settles (judgement). */
public record WoodDensity(Density wet, Density dry) {}
