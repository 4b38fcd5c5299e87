package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;

/** What holds the leaves of a pair where they meet. */
final class PairNumbers {
    private PairNumbers() {}

    static Panel panel(String id, PairDesign pair, Figures figures) {
        List<Row> rows = new ArrayList<>(List.of(
                new Row(id + ".first", "Opens first", "the " + pair.active().key() + " leaf", "", id),
                new Row(
                        id + ".rod",
                        pair.rods() == 1 ? "Drop rod" : "Drop rods, each",
                        pair.rod().rod().name(),
                        Figures.ratio(pair.rod().utilisation()) + " of what it may, "
                                + figures.stress(pair.rod().stress()),
                        id),
                new Row(
                        id + ".push",
                        "Pushed with",
                        figures.force(pair.rod().push()),
                        figures.length(pair.rod().exposed()) + " free above its sleeve",
                        id),
                new Row(
                        id + ".sleeve",
                        "Hole of the sleeve",
                        figures.length(pair.sleeve().diameter()) + " x "
                                + figures.length(pair.sleeve().depth()),
                        pair.sleeveNeeded().isZero()
                                ? "cannot say"
                                : figures.length(pair.sleeveNeeded()) + " deep needed",
                        id),
                new Row(
                        id + ".tops",
                        "Tops out of line",
                        figures.signed(pair.topInService()),
                        "in the service gust; " + figures.signed(pair.topInWind()) + " in the design wind",
                        id),
                new Row(
                        id + ".apart",
                        "Latch corners part",
                        figures.length(pair.dropDifference()),
                        "in height, in the years after, soft soil",
                        id),
                new Row(id + ".slam", "One let slam", figures.force(pair.slam()), "on the other leaf", id)));
        for (int at = 0; at < pair.rated().size(); at++)
            rows.add(new Row(
                    id + ".gust." + at,
                    at == 0 ? "Left leaf stands" : "Right leaf stands",
                    figures.speed(pair.rated().get(at).allowable()),
                    "to its allowable, by its " + pair.rated().get(at).allowableLink() + "; "
                            + figures.speed(pair.rated().get(at).ultimate()) + " to where it gives",
                    id));
        return Panel.of("Where the leaves meet", id).withRows(rows);
    }
}
