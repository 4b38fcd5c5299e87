/**
 * The ground as measured, and as surface and profile. Knows shots, setups and break lines; must not know of fences, gates or jobs: where a run lies
 * in plan comes in as a line. Read {@link plumbleaf.engine.ground.GroundBook}, then the profile and the surface made from it.
 */
@NullMarked
package plumbleaf.engine.ground;

import org.jspecify.annotations.NullMarked;
