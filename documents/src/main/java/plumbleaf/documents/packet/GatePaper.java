package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.SagBar;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.strength.RatedGust;

/**
 * A gate that has a leaf, with all its papers say of it.
 *
 * @param subjects its only leaf, or leaf a and leaf b of a pair
 * @param hangs  how each hangs; empty where that is not worked out
 * @param pair what holds the leaves of a pair where they meet
 * @param gusts the gust that each of its parts stands
 */
public record GatePaper(
        Gate asked,
        List<GateSubject> subjects,
        List<Hangs> hangs,
        Optional<PairDesign> pair,
        List<RatedGust.Part> gusts) {
    public GatePaper {
        gusts = List.copyOf(gusts);
        subjects = List.copyOf(subjects);
        hangs = List.copyOf(hangs);
    }

    /** Its only leaf, or leaf a. */
    public GateSubject subject() {
        return subjects.get(0);
    }

    public Leaf leaf() {
        return subject().leaf();
    }

    public boolean isPair() {
        return subject().isPair();
    }

    /** What a paper of one leaf is called by: the gate, or the leaf of a pair. */
    public String mark() {
        return subject().mark();
    }

    /** Leaf by leaf, each as a paper of its own. */
    public List<GatePaper> leaves() {
        List<GatePaper> leaves = new ArrayList<>();
        for (int i = 0; i < subjects.size(); i++)
            leaves.add(new GatePaper(
                    asked, List.of(subjects.get(i)), hangs.isEmpty() ? List.of() : List.of(hangs.get(i)), pair, gusts));
        return List.copyOf(leaves);
    }

    /** Which leaf of a pair opens first; the left one where it is none. */
    public Side active() {
        return asked.kind()
                .match(swing -> Side.LEFT, pairKind -> pairKind.active(), slide -> Side.LEFT, flagged -> Side.LEFT);
    }

    /**
     * How a leaf hangs.
     *
     * @param limits   what its drop is judged by
     * @param loadPath weakest link first
     * @param workings pressures, drop, lean and frequency line by line
     */
    public record Hangs(
            GateSag sag,
            List<SagBar.Limit> limits,
            List<CaseForces> cases,
            List<HingePull> hinges,
            List<LinkUse> loadPath,
            List<Working> workings) {
        public Hangs {
            workings = List.copyOf(workings);
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
