package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * Where the rails of a style lie in an infill of one height.
 *
 * @param depth of a rail, upright
 * @param heights of their centres above the infill's bottom, from the lowest up
 */
public record RailRows(Length depth, List<Length> heights) {
    public RailRows {
        heights = List.copyOf(heights);
    }

    /**
     * Rails share the height between the lowest and the highest alike. One alone lies in the middle, but over a bottom wire it is the top rail, and more of them
     * then share the height down to the bottom with the wire in the lowest place.
     */
    public static RailRows of(FenceStyle style, Catalogue catalogue, Length infill) {
        int count = style.railsFor(infill);
        return style.rails()
                .match(
                        none -> new RailRows(Length.ZERO, List.of()),
                        wood -> new RailRows(wood.rail().width(), boarded(count, wood.edge(), infill, style)),
                        steel -> new RailRows(
                                catalogue
                                        .section(steel.section())
                                        .map(Section::depth)
                                        .orElse(Length.ZERO),
                                rows(count, steel.edge(), infill, steel.bottomWire())));
    }

    /** Rails of boards that begin over a kick board and end under a cap. */
    private static List<Length> boarded(int count, Length edge, Length infill, FenceStyle style) {
        double below = style.trim().below().inches();
        double high = Math.max(1, infill.inches() - below - style.trim().above().inches());
        return rows(count, edge, Length.inches(high), false).stream()
                .map(row -> row.plus(Length.inches(below)))
                .toList();
    }

    /** The height of infill whose wind the busiest rail carries, by {@link RailShare}; a bottom wire counts as a neighbour at the bottom. */
    public Length busiestShare(Length infill, boolean bottomWire) {
        List<Double> held = new ArrayList<>();
        if (bottomWire) held.add(0.0);
        for (Length height : heights) held.add(height.inches());
        if (held.size() < 2) return infill;
        int last = held.size() - 1;
        double under = held.get(0);
        double over = infill.inches() - held.get(last);
        double busiest = RailShare.ofEnd(over, held.get(last) - held.get(last - 1), last == 1 ? under : 0);
        if (!bottomWire)
            busiest = Math.max(busiest, RailShare.ofEnd(under, held.get(1) - held.get(0), last == 1 ? over : 0));
        for (int i = 1; i < last; i++) busiest = Math.max(busiest, (held.get(i + 1) - held.get(i - 1)) / 2);
        return Length.inches(busiest);
    }

    /** The same rails where the infill hangs so much further down under them. */
    public RailRows over(Length below) {
        return new RailRows(depth, heights.stream().map(row -> row.plus(below)).toList());
    }

    /** The widest space between two rails that follow each other; the whole height where there are fewer than two. */
    public Length widestSpace(Length infill) {
        if (heights.size() < 2) return infill;
        double widest = 0;
        for (int i = 1; i < heights.size(); i++)
            widest = Math.max(
                    widest, heights.get(i).inches() - heights.get(i - 1).inches());
        return Length.inches(widest);
    }

    private static List<Length> rows(int count, Length edge, Length infill, boolean bottomWire) {
        double low = edge.inches();
        double high = infill.inches() - edge.inches();
        int places = bottomWire ? count + 1 : count;
        List<Length> rows = new ArrayList<>();
        for (int place = bottomWire ? 1 : 0; place < places; place++)
            rows.add(Length.inches(
                    places == 1 ? infill.inches() / 2 : Math.max(0, low + (high - low) * place / (places - 1))));
        return rows;
    }
}
