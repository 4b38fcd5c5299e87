package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Offset;

/** The total drop, slack included, in soft, likely and stiff soil, + down. */
public record SoilDrops(Offset soft, Offset likely, Offset stiff) {}
