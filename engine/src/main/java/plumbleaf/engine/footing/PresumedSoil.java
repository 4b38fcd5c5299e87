package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Pressure;

/**
 * A row of the presumptive soil table. Allowable-stress values: pair them with 0.6 W.
 *
 * @param number class 1 to 5
 * @param lateralPerFoot lateral bearing per foot of depth below natural grade
 * @param friction times the dead load; zero where the row gives a cohesion
 * @param cohesion times the contact area; zero where the row gives a friction
 */
public record PresumedSoil(
        int number,
        String name,
        Pressure bearing,
        Pressure lateralPerFoot,
        double friction,
        Pressure cohesion,
        String source,
        String confidence) {}
