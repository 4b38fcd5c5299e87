package plumbleaf.engine.design;

import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Layout;

/** A job laid out and no further: where its posts stand and what hangs between them. */
public record Laid(Job job, Ground ground, Layout layout) {
    /** A design drawn on this layout: what its holes, its gates and its words are is what they were. */
    public Design drawnWith(Design before) {
        return new Design(
                job,
                ground,
                layout,
                before.posts(),
                before.gates(),
                before.choices(),
                before.quote(),
                before.rated(),
                before.findings());
    }
}
