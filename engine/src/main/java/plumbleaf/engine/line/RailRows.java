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
                        wood -> new RailRows(wood.rail().width(), rows(count, wood.edge(), infill, false)),
                        steel -> new RailRows(
                                catalogue
                                        .section(steel.section())
                                        .map(Section::depth)
                                        .orElse(Length.ZERO),
                                rows(count, steel.edge(), infill, steel.bottomWire())));
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
