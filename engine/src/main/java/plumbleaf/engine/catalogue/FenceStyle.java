package plumbleaf.engine.catalogue;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * How a kind of fence is made. A style is data, so that a user can add one.
 *
 * @param id {@code wood-side-by-side}
 * @param boardWidth width and thickness of a picket as bought
 * @param species of the boards, as in the wood tables
 * @param railWidth depth of a rail in the plane of the wind (its larger face stands upright when 3-1/2 in.)
 * @param rails how many, by height of the infill
 * @param gap wanted gap between pickets when set
 * @param leastGap least that may be chosen so that whole pickets fit
 * @param greatestGap most that may be chosen
 * @param leastRip the narrowest picket that may be ripped
 * @param railEdge distance of the lowest rail's centre from the infill's bottom, and of the highest from its top
 * @param solidShare share of the face that stops the wind
 */
public record FenceStyle(
        String id,
        String name,
        Length boardWidth,
        Length boardThickness,
        String species,
        Length railWidth,
        Length railThickness,
        String railSpecies,
        List<RailCount> rails,
        Length gap,
        Length leastGap,
        Length greatestGap,
        Length leastRip,
        Length railEdge,
        double solidShare,
        int fastenersPerCrossing,
        String source) {
    public FenceStyle {
        rails = List.copyOf(rails);
        if (!(solidShare > 0 && solidShare <= 1))
            throw new IllegalArgumentException("Solid share must be above 0 and at most 1");
    }

    /** How many rails an infill of this height takes: those of the first row that reaches it, else of the last row. */
    public int railsFor(Length infill) {
        for (RailCount row : rails) {
            if (infill.compareTo(row.upTo()) <= 0) return row.count();
        }
        return rails.get(rails.size() - 1).count();
    }
}
