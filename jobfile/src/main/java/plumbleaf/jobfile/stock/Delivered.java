package plumbleaf.jobfile.stock;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.TakeoffLine;

/**
 * What came of one line of an order.
 *
 * @param bar whether it is cut from, and so has a length, or is counted
 * @param length of a bar; zero for goods
 * @param contents what one unit of goods holds, in {@code of}
 * @param neededBy day as files write it; empty where the job has no first day
 */
public record Delivered(
        String item, boolean bar, Length length, int count, double contents, NetUnit of, String neededBy) {
    public Delivered {
        if (count < 0) throw new IllegalArgumentException(count + " of " + item + " cannot have come");
    }

    /** Some units of a line that is ordered. */
    public static Delivered of(TakeoffLine line, int units) {
        boolean bar = line.cut();
        return new Delivered(
                line.item(),
                bar,
                bar ? Length.feet(line.sold().contents()) : Length.ZERO,
                units,
                bar ? 1 : line.sold().contents(),
                bar ? NetUnit.FEET : line.sold().of(),
                OrderTables.day(line));
    }
}
