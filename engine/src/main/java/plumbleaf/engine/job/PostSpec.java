package plumbleaf.engine.job;

import plumbleaf.engine.support.Support;

/** A gate post: what holds it. Its section and hole are in the builds. */
public record PostSpec(Support support) {}
