package plumbleaf.engine.line;

import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.quantity.Offset;

/** How high a barrier stands to somebody who comes to it from one side. */
public final class BarrierSide {
    private BarrierSide() {}

    /**
     * @param least least height of the top over the ground on that side and on the fence's own line
     * @param known whether the ground on that side was shot all along
     */
    public record Least(Offset least, boolean known) {}

    /**
     * The least height between two stations of a straight top.
     *
     * @param inside whether they come from the inside of the run
     */
    public static Least of(
            Ground ground, RunLine line, boolean inside, Offset from, Offset to, Offset topFrom, Offset topTo) {
        BesideGround.Height height = new BesideGround(ground, line)
                .least(inside, from.inches(), to.inches(), topFrom.inches(), topTo.inches());
        return new Least(new Offset(height.mostIn()), height.known());
    }
}
