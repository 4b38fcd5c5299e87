package plumbleaf.engine.design;

import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.SetPost;
import plumbleaf.engine.pricing.PriceBook;

/**
 * Designs one job again and again while it is being edited, and works out again only what an edit touches. Gives exactly what {@link Designs#of} gives. Holds the
 * parts of two designs; for one thread at a time. Check: RedesignTest.
 */
public final class Redesigner {
    private final Catalogue sold;
    private final Standards standards;
    private final DesignMemory memory;

    public Redesigner(Catalogue sold, Standards standards, CutPlanner planner) {
        this.sold = sold;
        this.standards = standards;
        this.memory = new DesignMemory(planner);
    }

    public Design of(Job job, PriceBook book) {
        return Designs.of(job, sold, standards, book, memory);
    }

    /** What a post put somewhere else makes of the layout, within a design whose gates keep their builds; what it comes to a whole design says. */
    public Laid moved(Design from, String run, SetPost post) {
        Job job = from.job().withRun(from.job().run(run).withSet(post));
        return Designs.laid(job, sold, standards, from.choices());
    }
}
