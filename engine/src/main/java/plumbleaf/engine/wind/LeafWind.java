package plumbleaf.engine.wind;

import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Speed;

/**
 * Wind on a gate's leaf, strength level: shut as part of its fence, or standing open as a wall of its own.
 *
 * @param pressure on its gross face
 * @param height of the resultant above ground
 * @param offCentre how far along the leaf the resultant may stand off the middle (Case B), either way
 * @param windCase what it was taken as
 * @param coefficient what q G is multiplied by, the mean over the leaf, summed beside the pressure; zero where it is not known
 */
public record LeafWind(Pressure pressure, Length height, Length offCentre, String windCase, double coefficient) {
    /** A wind that is given, and not worked out here. */
    public LeafWind(Pressure pressure, Length height, Length offCentre, String windCase) {
        this(pressure, height, offCentre, windCase, 0);
    }

    /** ASCE 7-16 Figure 29.3-1 Case B. */
    private static final double OFF_CENTRE_SHARE = 0.2;

    /** A leaf that closes its fence: the worst pressure of the stretch over the leaf's own width. */
    public static LeafWind shut(LegWind leg, Span leaf) {
        TributaryWind wind = leg.shut(leaf);
        return new LeafWind(wind.mean(), wind.height(), Length.ZERO, wind.windCase(), wind.coefficient());
    }

    /**
     * A leaf on its own, standing open or between wide gaps: its own B/s, and s/h with the gap under it. The moment goes to the hinge post; torsion only
     * through what holds it open. Source: ASCE 7-16 Figure 29.3-1 Cases A and B. Check: WallWindCheck.
     *
     * @param width of the leaf, B
     * @param surface its height, s
     * @param top of the leaf above ground, h
     */
    public static LeafWind alone(
            SiteWind site, Length width, Length surface, Length top, Screen screen, WindTables tables) {
        return alone(WallWind.of(site, stretch(width, surface, top, screen), tables));
    }

    /** A gust of any speed on a leaf on its own, without the standard's floor. */
    public static LeafWind aloneInGust(
            SiteWind site, Speed speed, Length width, Length surface, Length top, Screen screen, WindTables tables) {
        return alone(WallWind.gust(site, speed, stretch(width, surface, top, screen), tables));
    }

    private static WallStretch stretch(Length width, Length surface, Length top, Screen screen) {
        return new WallStretch(width, surface, top, screen, Length.ZERO, Length.ZERO);
    }

    private static LeafWind alone(WallWind wind) {
        WallStretch leaf = wind.stretch();
        TributaryWind whole = wind.over(Length.ZERO, leaf.length());
        return new LeafWind(
                whole.mean(),
                whole.height(),
                leaf.length().times(OFF_CENTRE_SHARE),
                "alone " + whole.windCase(),
                whole.coefficient());
    }
}
