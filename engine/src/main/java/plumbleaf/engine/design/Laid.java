package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Layout;

/**
 * A job laid out and no further: where its posts stand, what hangs between them, its gates as they are drawn.
 *
 * @param gates those that find a place, in the order of the job; none of them is hung
 */
public record Laid(Job job, Ground ground, Layout layout, List<GateDesign> gates) {
    public Laid {
        gates = List.copyOf(gates);
    }

    /** A design to draw this from: what its holes, its price and its words are is what they were. */
    public Design drawnWith(Design before) {
        return new Design(
                job,
                ground,
                layout,
                before.posts(),
                gates.stream()
                        .map(gate -> before.gate(gate.id()).map(gate::carriedAs).orElse(gate))
                        .toList(),
                before.choices(),
                before.quote(),
                before.rated(),
                before.findings());
    }
}
