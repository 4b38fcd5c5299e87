package plumbleaf.engine.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.WoodPost;

/**
 * What a yard can get.
 *
 * @param sections steel sections, by id
 * @param species the woods that styles name
 * @param rods drop rods, thin to thick
 * @param rollers wheel sets of slide gates
 * @param woodPosts sawn posts, by id
 * @param screws for boards, short to long
 * @param fastenerFits which finish of a fastener stands up in which wood
 * @param bolts sizes of hex bolt, small to large
 * @param augers hole diameters the crew can drill, small to large
 * @param depthStep what footing depths are rounded up to
 */
public record Catalogue(
        List<Section> sections,
        List<WoodSpecies> species,
        List<WoodPost> woodPosts,
        List<FenceStyle> styles,
        List<Screw> screws,
        List<FastenerFit> fastenerFits,
        List<HingeModel> hinges,
        List<LatchModel> latches,
        List<RodModel> rods,
        List<RollerModel> rollers,
        List<BoltSize> bolts,
        List<StockLength> stock,
        List<Length> augers,
        Length depthStep) {
    public Catalogue {
        sections = List.copyOf(sections);
        species = List.copyOf(species);
        woodPosts = List.copyOf(woodPosts);
        styles = List.copyOf(styles);
        screws = List.copyOf(screws);
        fastenerFits = List.copyOf(fastenerFits);
        hinges = List.copyOf(hinges);
        latches = List.copyOf(latches);
        rods = List.copyOf(rods);
        rollers = List.copyOf(rollers);
        bolts = List.copyOf(bolts);
        stock = List.copyOf(stock);
        augers = List.copyOf(augers);
    }

    public Optional<Section> section(String id) {
        return sections.stream().filter(section -> section.id().equals(id)).findFirst();
    }

    /** A steel section or a wood post of this id. */
    public Optional<PostStock> post(String id) {
        for (WoodPost post : woodPosts) {
            if (post.id().equals(id)) return Optional.of(post);
        }
        return section(id).map(steel -> steel);
    }

    /** This catalogue with parts a user entered; one of a known id takes its place. */
    public Catalogue with(OwnParts own) {
        if (own.isEmpty()) return this;
        return new Catalogue(
                replaced(sections, own.sections(), Section::id),
                species,
                woodPosts,
                replaced(styles, own.styles(), FenceStyle::id),
                screws,
                fastenerFits,
                replaced(hinges, own.hinges(), HingeModel::id),
                replaced(latches, own.latches(), LatchModel::id),
                replaced(rods, own.rods(), RodModel::id),
                replaced(rollers, own.rollers(), RollerModel::id),
                bolts,
                stock,
                augers,
                depthStep);
    }

    private static <T> List<T> replaced(List<T> sold, List<T> own, Function<T, String> id) {
        List<T> all = new ArrayList<>();
        for (T part : sold) if (own.stream().noneMatch(mine -> id.apply(mine).equals(id.apply(part)))) all.add(part);
        all.addAll(own);
        return all;
    }

    /** This catalogue with a user's own styles; one of a known id takes its place. */
    public Catalogue withStyles(List<FenceStyle> own) {
        List<FenceStyle> all = new ArrayList<>();
        for (FenceStyle style : styles) {
            if (own.stream().noneMatch(one -> one.id().equals(style.id()))) all.add(style);
        }
        all.addAll(own);
        return new Catalogue(
                sections,
                species,
                woodPosts,
                all,
                screws,
                fastenerFits,
                hinges,
                latches,
                rods,
                rollers,
                bolts,
                stock,
                augers,
                depthStep);
    }

    public Optional<WoodSpecies> species(String id) {
        return species.stream().filter(wood -> wood.id().equals(id)).findFirst();
    }

    public Optional<FenceStyle> style(String id) {
        return styles.stream().filter(style -> style.id().equals(id)).findFirst();
    }

    /** The shortest screw that holds with an inch of thread (judgement) behind so much board; the longest where none does. */
    public Screw screwThrough(Length boards) {
        for (Screw screw : screws) {
            if (screw.inRail(boards).inches() >= 1 - 1e-9) return screw;
        }
        return screws.get(screws.size() - 1);
    }

    public Optional<FastenerFit> fastenerFit(String wood, FastenerFinish finish) {
        return fastenerFits.stream()
                .filter(row -> row.wood().equals(wood) && row.finish() == finish)
                .findFirst();
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

    public Optional<RollerModel> roller(String id) {
        return rollers.stream().filter(roller -> roller.id().equals(id)).findFirst();
    }

    /** The bolt of a diameter, or the next larger one. */
    public Optional<BoltSize> bolt(Length diameter) {
        return bolts.stream()
                .filter(size -> size.diameter().inches() >= diameter.inches() - 1e-9)
                .findFirst();
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
