package plumbleaf.engine.design;

import java.util.OptionalDouble;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.sag.CaseForces;

/**
 * A hinge and the most it is asked for.
 *
 * @param z of its pin above grade at the pin
 * @param worst the case that pulls or pushes it hardest
 * @param capacity what a hinge may be pulled sideways with; zero when unknown
 */
public record HingeUse(
        String id, Offset z, CaseForces worst, Force horizontal, Force capacity, OptionalDouble utilisation) {}
