package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;

/**
 * A size of hex bolt with coarse threads, its nut and its washers, and of a lag screw as thick.
 *
 * @param threadsPerInch of the coarse thread
 * @param nut height of the hex nut
 * @param washer thickness of one flat washer
 * @param hole drilled for it in steel
 * @param washerOver outside of the narrow washer that lies on a tube
 * @param woodWasherOver outside of the wide washer that lies on wood
 * @param lagRoot of a lag screw
 * @param lagTip its point, which holds nothing
 */
public record BoltSize(
        Length diameter,
        int threadsPerInch,
        Length nut,
        Length washer,
        Length hole,
        Length washerOver,
        Length woodWasherOver,
        Length lagRoot,
        Length lagTip) {
    /** The least of a nut as high as its bolt, washers as the common ones run; root and point of a lag by their usual share (judgement). */
    public static BoltSize ofNoTable(Length diameter, int threadsPerInch, Length washer, Length hole) {
        return new BoltSize(
                diameter,
                threadsPerInch,
                diameter,
                washer,
                hole,
                diameter.times(2),
                diameter.times(2.5),
                diameter.times(0.7),
                diameter.times(0.6));
    }
}
