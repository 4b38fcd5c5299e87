package plumbleaf.engine.design;

import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;

/**
 * Designs one job again and again while it is being edited, and works out again only what an edit touches. Gives exactly what {@link Designs#of} gives. Holds the
 * parts of two designs; for one thread at a time. Check: RedesignTest.
 *
 * <p>Who cannot wait for all of it asks in three steps: {@link #laid}, {@link #unpriced}, {@link #of}; what one has worked out the next takes over.
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
        return designed(job, book, true);
    }

    /** The whole design but for one thing: what each remedy would do to the price is left open. */
    public Design unpriced(Job job, PriceBook book) {
        return designed(job, book, false);
    }

    private Design designed(Job job, PriceBook book, boolean pricesRemedies) {
        Catalogue catalogue = sold.with(job.parts());
        memory.begin(job, catalogue, book);
        return Designs.of(job, catalogue, standards, book, memory, pricesRemedies);
    }

    /**
     * What an edit makes of the layout and of how the gates are drawn, and no further: nothing is loaded, hung, cut or priced, nothing of the parts held here is used, and nothing is
     * kept. What it comes to a whole design says; its layout is that of the whole design, as long as no other build is chosen. Check: LaidTest.
     *
     * @param from the design before the edit: a gate whose build the job leaves open is drawn with the build that was chosen for it there
     * @param job as it is with the edit
     */
    public Laid laid(Design from, Job job) {
        return Designs.laid(job, sold, standards, from.choices());
    }
}
