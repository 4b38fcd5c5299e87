package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/** The flat bar on the meeting stile of the leaf that opens last, which keeps the first one from swinging past it. */
public final class StopStrip {
    /** Steel flat, 3/16 in. thick. Judgement. */
    public static final Length THICKNESS = Length.inches(0.1875);

    /** Steel, 490 pcf. */
    private static final double STEEL_LB_PER_IN3 = 490 / 1728.0;

    private StopStrip() {}

    static Force weight(Length width, Length height) {
        return Force.pounds(width.inches() * THICKNESS.inches() * height.inches() * STEEL_LB_PER_IN3);
    }
}
