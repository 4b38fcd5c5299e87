package plumbleaf.engine.job;

import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;

/**
 * Numbers about the ground that somebody measured or vouches for, in place of a table's.
 *
 * @param undrained su of clay or silt
 * @param lateralPerFoot lateral bearing per foot of depth, by a soils report
 * @param besideDrop height of a retaining wall or trench beside the posts; within it the ground holds nothing
 * @param rockAt how deep a hole goes before rock refuses it; zero where nobody met any
 * @param pulls what the first posts on the site showed when pulled
 */
public record SoilNumbers(
        Stated<Pressure> undrained,
        Stated<Pressure> lateralPerFoot,
        Length besideDrop,
        Length rockAt,
        List<FirstPull> pulls) {
    /** Nobody measured anything. */
    public static final SoilNumbers NONE =
            new SoilNumbers(Stated.open(), Stated.open(), Length.ZERO, Length.ZERO, List.of());

    SoilNumbers beside(Length drop) {
        return new SoilNumbers(undrained, lateralPerFoot, drop, rockAt, pulls);
    }

    public SoilNumbers {
        pulls = List.copyOf(pulls);
    }
}
