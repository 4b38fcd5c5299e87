/**
 * What holds a post: a new footing, a driven post, a plate on a slab, a core in concrete, anchors in a wall, or what stands there
 * already. Data only; how stiff and how strong each one is, is worked out in {@code footing} and later. Must not know of posts, gates or jobs.
 */
@NullMarked
package plumbleaf.engine.support;

import org.jspecify.annotations.NullMarked;
