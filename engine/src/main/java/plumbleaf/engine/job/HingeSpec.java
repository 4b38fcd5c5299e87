package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * Where the hinges sit and how they share.
 *
 * @param model id of a hinge in the catalogue
 * @param fromTop pin centre of the top hinge below the outline's top at the hinge stile
 * @param fromBottom pin centre of the bottom hinge above the outline's bottom there
 * @param count two or more, evenly spaced between
 * @param weightOn which hinge carries the weight, counted from the bottom, 0 the lowest
 * @param closer whether a closer checks the last of the swing of each leaf
 */
public record HingeSpec(String model, Length fromTop, Length fromBottom, int count, int weightOn, boolean closer) {
    /** Without a closer. */
    public HingeSpec(String model, Length fromTop, Length fromBottom, int count, int weightOn) {
        this(model, fromTop, fromBottom, count, weightOn, false);
    }

    public HingeSpec {
        if (count < 2 || count > 5) throw new IllegalArgumentException("Hinge count must be 2 to 5, was " + count);
        if (weightOn < 0 || weightOn >= count)
            throw new IllegalArgumentException("No hinge " + weightOn + " among " + count);
    }

    public HingeSpec withModel(String other) {
        return new HingeSpec(other, fromTop, fromBottom, count, weightOn, closer);
    }

    public HingeSpec withCloser(boolean fitted) {
        return new HingeSpec(model, fromTop, fromBottom, count, weightOn, fitted);
    }
}
