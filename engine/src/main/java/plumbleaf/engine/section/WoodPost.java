package plumbleaf.engine.section;

import java.util.function.Function;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * A sawn post at its dressed size.
 *
 * @param id {@code PINE-4x4}
 * @param depth along the run
 * @param width across it
 * @param species for its weight, and for fasteners in it
 * @param grade reference design values of this size: dimension lumber to 4 in. thick, posts and timbers from 5 in. up
 * @param timber whether it is 5 in. or more each way, so that the wet-service and size factors of timbers hold
 * @param incised whether it was incised for treatment
 */
public record WoodPost(
        String id,
        String name,
        Length depth,
        Length width,
        WoodSpecies species,
        WoodGrade grade,
        boolean timber,
        boolean incised,
        String source,
        String confidence)
        implements PostStock {
    public WoodPost {
        if (depth.isZero() || width.isZero()) throw new IllegalArgumentException("Post " + id + " needs a size");
    }

    @Override
    public <T> T match(Function<Section, T> steel, Function<WoodPost, T> wood) {
        return wood.apply(this);
    }

    @Override
    public boolean isRound() {
        return false;
    }

    @Override
    public Force weightOf(Length length) {
        return outline().weightOf(length, Moisture.WET);
    }

    /** Its outline, x bending along the run. */
    public Timber outline() {
        return new Timber(depth, width, species);
    }
}
