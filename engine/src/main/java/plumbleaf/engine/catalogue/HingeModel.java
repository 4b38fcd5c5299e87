package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * A hinge as its maker's sheet, or the user, describes it.
 *
 * @param capacityPerPair leaf weight a pair carries at {@code capacityWidth}; zero when unknown, which is never a pass
 * @param capacityWidth leaf width at which the capacity holds
 * @param capacitySpacing hinge spacing at which it holds
 * @param slack play of the pin in the knuckle, across
 * @param stiffnessLbPerIn horizontal force per inch of give of one hinge, its arm and its fixing
 * @param adjusts how far the leaf can be reset after hanging, either way; zero when not
 * @param risePerDegree how much the leaf rises for each degree of opening; zero for a plain hinge
 */
public record HingeModel(
        String id,
        String name,
        Force capacityPerPair,
        Length capacityWidth,
        Length capacitySpacing,
        Length slack,
        double stiffnessLbPerIn,
        PinPlace pin,
        HingeFixing fixing,
        Length adjusts,
        Length risePerDegree,
        boolean selfClosing,
        Force weight,
        String source) {
    /** From the face of the post to the pin's centre, along the run. */
    public Length pinOffset() {
        return pin.offset();
    }

    /** From the leaf's middle plane to the pin's centre, towards the swing side. */
    public Length swingOffset() {
        return pin.swingSide();
    }

    public HingeModel rising(Length perDegree) {
        return new HingeModel(
                id,
                name,
                capacityPerPair,
                capacityWidth,
                capacitySpacing,
                slack,
                stiffnessLbPerIn,
                pin,
                fixing,
                adjusts,
                perDegree,
                selfClosing,
                weight,
                source);
    }

    public HingeModel at(PinPlace other) {
        return new HingeModel(
                id,
                name,
                capacityPerPair,
                capacityWidth,
                capacitySpacing,
                slack,
                stiffnessLbPerIn,
                other,
                fixing,
                adjusts,
                risePerDegree,
                selfClosing,
                weight,
                source);
    }
}
