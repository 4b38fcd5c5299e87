package plumbleaf.web.room;

import java.util.List;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;

/** What holds the leaves of a pair where they meet. */
final class PairNumbers {
    private PairNumbers() {}

    static Panel panel(String id, PairDesign pair, Figures figures) {
        return Panel.of("Where the leaves meet", id)
                .withRows(List.of(
                        new Row(
                                id + ".first",
                                "Opens first",
                                "the " + pair.active().key() + " leaf",
                                "",
                                id),
                        new Row(
                                id + ".rod",
                                pair.rods() == 1 ? "Drop rod" : "Drop rods, each",
                                pair.rod().rod().name(),
                                Figures.ratio(pair.rod().utilisation()) + " of what it may, "
                                        + DecimalText.fixed(pair.rod().stress().psi() / 1000, 1) + " ksi",
                                id),
                        new Row(
                                id + ".push",
                                "Pushed with",
                                Figures.force(pair.rod().push()),
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
                        new Row(id + ".slam", "One let slam", Figures.force(pair.slam()), "on the other leaf", id)));
    }
}
