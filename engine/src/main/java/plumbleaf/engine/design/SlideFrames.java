package plumbleaf.engine.design;

import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;

/** The tubes a slide leaf is welded of. */
final class SlideFrames {
    /** Thinner is not welded in an ordinary shop; 14 gauge, common practice, no source. */
    private static final Length THINNEST = Length.inches(0.083);

    private SlideFrames() {}

    /** Square tubes that some set of rollers takes, the lightest first. */
    static List<Section> of(Catalogue catalogue) {
        return catalogue.sections().stream()
                .filter(tube -> tube.family().equals("tube")
                        && tube.shape() == Shape.SQUARE
                        && tube.id().startsWith("TUBE")
                        && tube.nominalWall().compareTo(THINNEST) >= 0
                        && catalogue.rollers().stream().anyMatch(rollers -> rollers.suits(tube)))
                .sorted(Comparator.comparingDouble(
                                (Section tube) -> tube.weightPerFoot().pounds())
                        .thenComparing(Section::id))
                .toList();
    }
}
