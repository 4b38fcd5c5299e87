package plumbleaf.engine.catalogue;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * What a yard can get.
 *
 * @param sections steel and wood sections, by id
 * @param augers hole diameters the crew can drill, small to large
 * @param depthStep what footing depths are rounded up to
 */
public record Catalogue(
        List<Section> sections,
        List<FenceStyle> styles,
        List<HingeModel> hinges,
        List<LatchModel> latches,
        List<StockLength> stock,
        List<Length> augers,
        Length depthStep) {
    public Catalogue {
        sections = List.copyOf(sections);
        styles = List.copyOf(styles);
        hinges = List.copyOf(hinges);
        latches = List.copyOf(latches);
        stock = List.copyOf(stock);
        augers = List.copyOf(augers);
    }

    public Optional<Section> section(String id) {
        return sections.stream().filter(section -> section.id().equals(id)).findFirst();
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

    /** The lengths an item is sold in, short to long. */
    public List<StockLength> lengthsOf(String item) {
        return stock.stream().filter(length -> length.item().equals(item)).toList();
    }
}
