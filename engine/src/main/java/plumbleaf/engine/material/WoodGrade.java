package plumbleaf.engine.material;

import plumbleaf.engine.quantity.Stress;

/**
 * Reference design values of dimension lumber, 2 to 4 in. thick, dry, normal duration.
 *
 * @param name {@code western cedars No. 2}
 * @param bending Fb
 * @param tension Ft
 * @param shear Fv
 * @param acrossGrain compression perpendicular to grain
 * @param compression Fc
 * @param modulus E
 * @param leastModulus Emin, for stability
 * @param sizeSpecific whether Fb already holds the size (southern pine), so that no size factor is taken
 */
public record WoodGrade(
        String name,
        Stress bending,
        Stress tension,
        Stress shear,
        Stress acrossGrain,
        Stress compression,
        Stress modulus,
        Stress leastModulus,
        boolean sizeSpecific) {}
