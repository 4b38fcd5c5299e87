package plumbleaf.engine.line;

/**
 * The height of infill whose load an end rail carries. Pickets are simple spans from rail to rail, and what hangs past an end rail is a lever over it. By moments
 * about the next rail, with the overhang c, the space g to that rail, and the overhang o past that one where there are but two rails:
 * {@code c + g/2 + (c2 - o2)/(2 g)}; an inner rail takes half of the space on either side. It stops being true where pickets are stiff against their rails: an inner
 * rail of three then takes up to a quarter more. Source: statics. Check: RailShareTest.
 */
public final class RailShare {
    private RailShare() {}

    /**
     * @param overIn what hangs past the rail
     * @param spaceIn to the next rail
     * @param otherIn what hangs past that one; zero where a further rail follows
     */
    public static double ofEnd(double overIn, double spaceIn, double otherIn) {
        return overIn + spaceIn / 2 + (overIn * overIn - otherIn * otherIn) / (2 * spaceIn);
    }
}
