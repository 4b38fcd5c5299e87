package plumbleaf.engine.design;

import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.quantity.Force;

/** What a bay of fence weighs, wet: what its posts carry on their axes. */
final class BayWeight {
    private BayWeight() {}

    static Force of(Bay bay, FenceStyle style, Catalogue catalogue) {
        double boardIn2 = style.boardWidth().inches() * style.boardThickness().inches();
        double boardIn3 = bay.pickets().pickets().stream()
                .mapToDouble(picket -> picket.length().inches() * boardIn2)
                .sum();
        double railIn2 = style.railWidth().inches() * style.railThickness().inches();
        double railIn3 = bay.rails().stream()
                .mapToDouble(rail -> rail.cut().inches() * railIn2)
                .sum();
        return Force.pounds(boardIn3 * wet(style.species(), catalogue) + railIn3 * wet(style.railSpecies(), catalogue));
    }

    private static double wet(String species, Catalogue catalogue) {
        return catalogue
                .species(species)
                .map(wood -> wood.densityAt(Moisture.WET).perCubicInch())
                .orElse(0.0);
    }
}
