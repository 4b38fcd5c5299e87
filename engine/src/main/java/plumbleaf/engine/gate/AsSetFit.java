package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.AsSet;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A leaf fitted between posts as they stand. The leaf hangs plumb and square: its hinge line is plumb where the hinge post reaches furthest into the opening, its
 * latch edge is plumb a latch gap before the latch post's nearest place, and packers under the hinges take up the hinge post's lean. Two posts that lean the
 * same way leave less room for it than any of the three readings.
 *
 * @param clear between the two plumb lines, within the leaf's height
 * @param latchGaps from the latch edge to the latch post, bottom, middle, top
 * @param hingeGaps from the hinge post to the hinge edge, bottom, middle, top
 * @param packers one a hinge, from the lowest up
 * @param tiltAlong lean of the hinge post towards the opening, over its height
 * @param tiltInside lean of the hinge post towards the inside, over its height
 * @param misclosure by how much the readings contradict each other
 */
public record AsSetFit(
        AsSet reading,
        Length clear,
        List<Length> latchGaps,
        List<Length> hingeGaps,
        List<Packer> packers,
        double tiltAlong,
        double tiltInside,
        Length misclosure) {
    public AsSetFit {
        latchGaps = List.copyOf(latchGaps);
        hingeGaps = List.copyOf(hingeGaps);
        packers = List.copyOf(packers);
    }

    /**
     * What goes under a hinge so that the pins stand plumb.
     *
     * @param along thickness between post and hinge
     * @param inside how far the hinge is set over, + towards the inside, from where the lowest one stands
     */
    public record Packer(String hinge, Length along, Offset inside) {}

    /** A hinge and its height above the leaf's bottom. */
    record At(String hinge, double heightIn) {}

    /**
     * With z from the leaf's bottom, H its height, p the hinge post's lean towards the opening: its face stands at {@code xh = p z / H}, the latch post's at
     * {@code xl = xh + clear(z)}, straight between the three readings. Hinge line {@code X = max xh}, room {@code min xl - X}, packer at z {@code X - xh}. The
     * latch post's own lean must come out: {@code p + pl + top - bottom = 0}. Source: plane geometry. Check: AsSetFitTest.
     *
     * @param heightIn H
     */
    static AsSetFit of(AsSet reading, double heightIn, List<At> hinges, Length hingeGap, Length latchGap) {
        double lean = reading.hingePlumbAlong().inches();
        double[] share = {0, 0.5, 1};
        double[] clear = {
            reading.bottom().inches(), reading.middle().inches(), reading.top().inches()
        };
        double hingeLine = Math.max(0, lean);
        double latchLine = Double.POSITIVE_INFINITY;
        for (int i = 0; i < share.length; i++) latchLine = Math.min(latchLine, lean * share[i] + clear[i]);
        List<Length> latchGaps = new ArrayList<>();
        List<Length> hingeGaps = new ArrayList<>();
        for (int i = 0; i < share.length; i++) {
            latchGaps.add(Length.inches(lean * share[i] + clear[i] - latchLine + latchGap.inches()));
            hingeGaps.add(Length.inches(hingeLine - lean * share[i] + hingeGap.inches()));
        }
        double inside = reading.hingePlumbAcross().inches();
        double lowest = hinges.isEmpty() ? 0 : hinges.get(0).heightIn();
        List<Packer> packers = new ArrayList<>();
        for (At at : hinges)
            packers.add(new Packer(
                    at.hinge(),
                    Length.inches(Math.max(0, hingeLine - lean * at.heightIn() / heightIn)),
                    Offset.inches(-inside * (at.heightIn() - lowest) / heightIn)));
        double contradiction = lean + reading.latchPlumbAlong().inches() + clear[2] - clear[0];
        return new AsSetFit(
                reading,
                Length.inches(Math.max(0, latchLine - hingeLine)),
                latchGaps,
                hingeGaps,
                packers,
                lean / heightIn,
                inside / heightIn,
                Length.inches(Math.abs(contradiction)));
    }

    /**
     * What pushes a leaf round when its pins follow the leaning post: {@code M = W a (ts cos q - ta sin q)}, + opening, ts the lean towards the swing side, ta
     * towards the opening. Source: statics of a pendulum about a leaning axis. Check: AsSetFitTest.
     *
     * @param weightLb W
     * @param centreIn a, from the pins to the leaf's centre of gravity
     * @param openRad q
     */
    public double driftLbIn(Hand hand, double weightLb, double centreIn, double openRad) {
        double toSwingSide = hand.swing() == SwingWay.IN ? tiltInside : -tiltInside;
        return weightLb * centreIn * (toSwingSide * StrictMath.cos(openRad) - tiltAlong * StrictMath.sin(openRad));
    }
}
