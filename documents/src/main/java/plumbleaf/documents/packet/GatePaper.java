package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.SagBar;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;

/**
 * A gate that has a leaf, with all its papers say of it.
 *
 * @param hangs  how it hangs; empty where that is not worked out
 */
public record GatePaper(Gate asked, GateSubject subject, List<Hangs> hangs) {
    public GatePaper {
        hangs = List.copyOf(hangs);
    }

    /**
     * How a leaf hangs.
     *
     * @param limits   what its drop is judged by
     * @param loadPath weakest link first
     */
    public record Hangs(
            GateSag sag,
            List<SagBar.Limit> limits,
            List<CaseForces> cases,
            List<HingePull> hinges,
            List<LinkUse> loadPath) {
        public Hangs {
            limits = List.copyOf(limits);
            cases = List.copyOf(cases);
            hinges = List.copyOf(hinges);
            loadPath = List.copyOf(loadPath);
        }
    }

    /** A hinge, the most it is pulled sideways, in which case, and what it may be; zero capacity when its maker's sheet is unknown. */
    public record HingePull(String id, Offset z, Force pull, Force capacity, String inCase) {}

    public String id() {
        return asked.id();
    }
}
