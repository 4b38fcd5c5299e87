package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * Bolts in one row along a plate, shared out elastically.
 *
 * @param count of bolts
 * @param apart from one to the next
 * @param lever from the row to the edge the plate turns about when it is pulled off sideways
 * @param ends from the outermost bolt to the plate's end: the lever of a lone bolt along the row
 */
public record BoltRow(int count, Length apart, Length lever, Length ends) {
    /**
     * The most that one bolt of the row carries.
     *
     * @param shear all that pushes it sideways
     * @param toRowDeg between that push and the row, 0 to 90
     */
    public record Share(Force shear, double toRowDeg, Force tension) {}

    /**
     * Elastic vector method: {@code shear = sqrt((Fr/n + T y/sum(y2))2 + (Fz/n)2)}, {@code pull = N/n + Mr y/sum(y2) + Mz/(n lever)}; every part counts as if it
     * pulled, which is on the safe side. A lone bolt takes moments along the row by the plate's end.
     * Source: elastic analysis of a bolt group, AISC Manual part 7 (from memory). Check: BoltRowTest.
     *
     * @param across Fr, in the plate's plane, square to the row, lb
     * @param along Fz, along the row
     * @param off N, off the plate
     * @param twist T, in the plate's plane, lb-in
     * @param tilt Mr, about the plate's line square to the row
     * @param roll Mz, about the row
     */
    public Share share(double across, double along, double off, double twist, double tilt, double roll) {
        double outermost = apart.inches() * (count - 1) / 2;
        double squares = 0;
        for (int i = 0; i < count; i++) {
            double y = apart.inches() * i - outermost;
            squares += y * y;
        }
        double perMoment = squares > 0 ? outermost / squares : 1 / ends.inches();
        double sideways = Math.abs(across) / count + Math.abs(twist) * perMoment;
        double lengthways = Math.abs(along) / count;
        double pull = Math.max(0, off) / count + Math.abs(tilt) * perMoment + Math.abs(roll) / (count * lever.inches());
        return new Share(
                Force.pounds(Math.sqrt(sideways * sideways + lengthways * lengthways)),
                StrictMath.toDegrees(StrictMath.atan2(sideways, lengthways)),
                Force.pounds(pull));
    }
}
