package plumbleaf.engine.catalogue;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * What a yard can get.
 *
 * @param sections steel sections, by id
 * @param species the woods that styles name
 * @param rods drop rods, thin to thick
 * @param augers hole diameters the crew can drill, small to large
 * @param depthStep what footing depths are rounded up to
 */
public record Catalogue(
        List<Section> sections,
        List<WoodSpecies> species,
        List<FenceStyle> styles,
        List<HingeModel> hinges,
        List<LatchModel> latches,
        List<RodModel> rods,
        List<StockLength> stock,
        List<Length> augers,
        Length depthStep) {
    public Catalogue {
        sections = List.copyOf(sections);
        species = List.copyOf(species);
        styles = List.copyOf(styles);
        hinges = List.copyOf(hinges);
        latches = List.copyOf(latches);
        rods = List.copyOf(rods);
        stock = List.copyOf(stock);
        augers = List.copyOf(augers);
    }

    public Optional<Section> section(String id) {
        return sections.stream().filter(section -> section.id().equals(id)).findFirst();
    }

    public Optional<WoodSpecies> species(String id) {
        return species.stream().filter(wood -> wood.id().equals(id)).findFirst();
    }

    public Optional<FenceStyle> style(String id) {
        return styles.stream().filter(style -> style.id().equals(id)).findFirst();
    }

    public Optional<HingeModel> hinge(String id) {
        return hinges.stream().filter(hinge -> hinge.id().equals(id)).findFirst();
    }

    public Optional<LatchModel> latch(String id) {
        return latches.stream().filter(latch -> latch.id().equals(id)).findFirst();
    }

    public Optional<RodModel> rod(String id) {
        return rods.stream().filter(rod -> rod.id().equals(id)).findFirst();
    }

    /** The lengths an item is sold in, short to long: {@code rail-2x4}, or the first word of a section's id, {@code TUBE}. */
    public List<Length> lengthsOf(String item) {
        return stock.stream()
                .filter(length -> length.item().equals(item))
                .map(StockLength::length)
                .sorted()
                .toList();
    }

    /** The lengths a section is sold in, short to long. */
    public List<Length> lengthsOf(Section section) {
        int dash = section.id().indexOf('-');
        return lengthsOf(dash < 0 ? section.id() : section.id().substring(0, dash));
    }
}
