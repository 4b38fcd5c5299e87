package plumbleaf.engine.job;

import java.time.LocalDate;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The opening as the posts stand.
 *
 * @param hingePlumbAlong lean of the hinge post over the leaf's height, positive towards the opening
 * @param hingePlumbAcross positive towards the inside
 */
public record AsSet(
        LocalDate date,
        Length top,
        Length middle,
        Length bottom,
        Offset hingePlumbAlong,
        Offset hingePlumbAcross,
        Offset latchPlumbAlong,
        Offset latchPlumbAcross) {
    /** The same readings for a leaf that hangs on the other post. */
    public AsSet fromTheOtherPost() {
        return new AsSet(
                date, top, middle, bottom, latchPlumbAlong, latchPlumbAcross, hingePlumbAlong, hingePlumbAcross);
    }
}
