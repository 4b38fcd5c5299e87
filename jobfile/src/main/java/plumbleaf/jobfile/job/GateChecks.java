package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LeafFill;
import plumbleaf.engine.job.RightLeaf;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;

/** Gates: each lies within one leg and clear of the others, and its hardware and fill are in the catalogue. */
final class GateChecks {
    /** Two sets of rollers, and what is left behind them. Judgement. */
    private static final Length SHORTEST_TAIL = Length.feet(3);

    private final Job job;
    private final Catalogue catalogue;
    private final List<Integer> gateAt;
    private final JobChecks checks;

    /** @param gateAt where each gate of the job stands in the file */
    GateChecks(Job job, Catalogue catalogue, List<Integer> gateAt, JobChecks checks) {
        this.job = job;
        this.catalogue = catalogue;
        this.gateAt = gateAt;
        this.checks = checks;
    }

    void all() {
        for (int i = 0; i < job.gates().size(); i++) gate(job.gates().get(i), "gates[" + gateAt.get(i) + "]");
        overlaps();
    }

    private void gate(Gate gate, String at) {
        checks.id(gate.id(), at);
        if (checks.runThere(gate.run(), at + ".run")) inOneLeg(gate, at);
        leaf(gate, at);
        gate.release().match(priced -> true, hold -> true, released -> releasable(gate, released.beforePosts(), at));
    }

    /** Opening and posts lie within one leg: no post can stand round a corner from its own gate. */
    private void inOneLeg(Gate gate, String at) {
        Run run = job.run(gate.run());
        Length from = gate.station();
        Length to = from.plus(gate.opening());
        Length end = JobChecks.lengthOf(run);
        if (to.compareTo(end) > 0) {
            checks.refuse(
                    at + ".station",
                    gate.id() + " reaches from " + checks.show(from) + " to " + checks.show(to) + ", and " + run.id()
                            + " ends at " + checks.show(end),
                    "move the gate, or make the run longer");
            return;
        }
        Length corner = Length.ZERO;
        for (int i = 0; i < run.legs().size() - 1; i++) {
            corner = corner.plus(run.legs().get(i).length());
            boolean across = from.compareTo(corner) < 0 && to.compareTo(corner) > 0;
            if (across)
                checks.refuse(
                        at + ".station",
                        gate.id() + " reaches from " + checks.show(from) + " to " + checks.show(to)
                                + ", across the corner at " + checks.show(corner),
                        "move the gate into one leg");
        }
    }

    private void leaf(Gate gate, String at) {
        rightLeaf(gate);
        boolean swings =
                gate.kind().match(swing -> true, pair -> true, slide -> slides(gate, slide, at), flagged -> false);
        if (!swings) return;
        Length gaps = gate.leaf().hingeGap().plus(gate.leaf().latchGap());
        if (gaps.plus(Length.inches(6)).compareTo(gate.opening()) > 0)
            checks.refuse(at + ".opening", "no leaf is left between the gaps", "write a wider opening or smaller gaps");
        fill(gate, gate.leaf().fill(), at + ".leaf.fill");
        Length hung = gate.hinges().fromTop().plus(gate.hinges().fromBottom());
        if (hung.compareTo(gate.leaf().infill()) >= 0)
            checks.refuse(
                    at + ".hinges",
                    "the hinges sit " + checks.show(hung) + " from top and bottom of a leaf "
                            + checks.show(gate.leaf().infill()) + " high",
                    "write a smaller fromTop or fromBottom");
        hinge(gate.hinges().model(), at + ".hinges.model");
        gate.kind()
                .match(
                        swing -> Optional.<String>empty(),
                        pair -> pair.meeting().rod().value(),
                        slide -> Optional.<String>empty(),
                        flagged -> Optional.<String>empty())
                .ifPresent(rod -> rod(rod, at + ".meeting.rod"));
        latch(gate, at);
    }

    /** A slide leaf has no hinges; false, since it does not swing. */
    private boolean slides(Gate gate, GateKind.Slide slide, String at) {
        fill(gate, gate.leaf().fill(), at + ".leaf.fill");
        latch(gate, at);
        List<String> rollers = new ArrayList<>();
        for (RollerModel each : catalogue.rollers()) rollers.add(each.id());
        slide.spec()
                .rollers()
                .value()
                .filter(id -> !rollers.contains(id))
                .ifPresent(id -> checks.refuse(
                        at + ".slide.rollers",
                        "the catalogue has no such rollers",
                        JobChecks.nearest(id, rollers, "write one of " + String.join(", ", rollers))));
        if (slide.spec().tail().compareTo(SHORTEST_TAIL) < 0)
            checks.refuse(
                    at + ".slide.tail",
                    "a tail of " + checks.show(slide.spec().tail()) + " leaves no room for two roller posts",
                    "write 3' or more; half the opening is usual");
        return false;
    }

    private void latch(Gate gate, String at) {
        List<String> latches = new ArrayList<>();
        for (LatchModel latch : catalogue.latches()) latches.add(latch.id());
        if (!latches.contains(gate.latch().model()))
            checks.refuse(
                    at + ".latch.model",
                    "the catalogue has no such latch",
                    JobChecks.nearest(gate.latch().model(), latches, "write one of " + String.join(", ", latches)));
    }

    private void rod(String rod, String at) {
        List<String> rods = new ArrayList<>();
        for (RodModel each : catalogue.rods()) rods.add(each.id());
        if (!rods.contains(rod))
            checks.refuse(
                    at,
                    "the catalogue has no such rod",
                    JobChecks.nearest(rod, rods, "write one of " + String.join(", ", rods)));
    }

    private boolean releasable(Gate gate, boolean beforePosts, String at) {
        boolean handed = gate.kind()
                .match(
                        swing -> swing.hinge().isSaid() && swing.swing().isSaid(),
                        pair -> pair.swing().isSaid(),
                        slide -> true,
                        (GateKind.Flagged flagged) -> false);
        if (!handed)
            checks.refuse(
                    at + ".release",
                    "a gate is not released before its hinge side and swing are said",
                    "write hinge and swing");
        if (gate.asSet().isEmpty() && !beforePosts)
            checks.refuse(
                    at + ".release",
                    "a gate is not released before its opening is measured between standing posts",
                    "write asSet, or \"beforePosts\": true when the customer signed for that");
        return handed;
    }

    private void overlaps() {
        for (int i = 0; i < job.gates().size(); i++) {
            Gate gate = job.gates().get(i);
            for (int j = 0; j < i; j++) {
                Gate other = job.gates().get(j);
                boolean apart = !gate.run().equals(other.run()) || endsBefore(gate, other) || endsBefore(other, gate);
                if (!apart)
                    checks.refuse(
                            "gates[" + gateAt.get(i) + "].station",
                            gate.id() + " and " + other.id() + " leave no room for a post between them",
                            "move one of them");
            }
        }
    }

    private static boolean endsBefore(Gate gate, Gate other) {
        Length narrowestPost = Length.inches(1.5);
        return gate.station().plus(gate.opening()).plus(narrowestPost).compareTo(other.station()) <= 0;
    }

    /** What fills the leaf of a gate is in the catalogue, and a curved top has pickets to follow it. */
    private void fill(Gate gate, LeafFill fill, String at) {
        boolean known = fill.match(
                asFence -> styleOfFence(gate)
                        .map(made -> follows(made, gate, at))
                        .orElseGet(() -> curved(gate, at, "a leaf filled as a fence that has no style")),
                bare -> curved(gate, at, "a bare frame"),
                style -> catalogue
                        .style(style.id())
                        .map(made -> follows(made, gate, at))
                        .orElseGet(() -> noStyle(at)),
                pickets -> picketSection(pickets.section(), at),
                mesh -> curved(gate, at, "mesh"),
                sheet -> curved(gate, at, "sheet"));
        if (!known) throw new IllegalStateException("A fill was not looked at");
    }

    /** What the right leaf of a pair has of its own. */
    private void rightLeaf(Gate gate) {
        RightLeaf own = job.builds().of(gate).rightLeaf();
        if (own.isAlike()) return;
        String at = "builds." + gate.id() + ".rightLeaf";
        boolean pair = gate.kind().match(swing -> false, is -> true, slide -> false, flagged -> false);
        if (!pair)
            checks.refuse(
                    at, gate.id() + " is no pair, and has but one leaf", "leave it away, or make the gate a pair");
        checks.section(own.frame(), at + ".frame");
        own.hinge().value().ifPresent(hinge -> hinge(hinge, at + ".hinge"));
        own.fill().value().ifPresent(fill -> fill(gate, fill, at + ".fill"));
    }

    private void hinge(String model, String at) {
        List<String> hinges = new ArrayList<>();
        for (HingeModel hinge : catalogue.hinges()) hinges.add(hinge.id());
        if (!hinges.contains(model))
            checks.refuse(
                    at,
                    "the catalogue has no such hinge",
                    JobChecks.nearest(model, hinges, "write one of " + String.join(", ", hinges)));
    }

    private Optional<FenceStyle> styleOfFence(Gate gate) {
        return job.runs().stream()
                .filter(run -> run.id().equals(gate.run()))
                .findFirst()
                .flatMap(run -> catalogue.style(run.style()));
    }

    /** Boards and pickets that stand up reach over the frame; what lies or is woven or welded does not. */
    private boolean follows(FenceStyle style, Gate gate, String at) {
        return style.infill()
                .match(
                        upright -> true,
                        both -> true,
                        lying -> curved(gate, at, "boards that lie (" + style.id() + ")"),
                        panel -> true,
                        fabric -> curved(gate, at, "chain-link fabric (" + style.id() + ")"),
                        mesh -> curved(gate, at, "mesh (" + style.id() + ")"));
    }

    private boolean curved(Gate gate, String at, String what) {
        boolean rises = !gate.leaf().top().curve().isZero()
                || !gate.leaf().infillAboveFrame().isZero();
        if (rises)
            checks.refuse(
                    at,
                    what + " ends at the straight top of the frame and follows no curve above it",
                    "fill the leaf with pickets, or make its top straight");
        return true;
    }

    private boolean noStyle(String at) {
        checks.refuse(at + ".style", "the catalogue has no such style", "write the id of one");
        return true;
    }

    private boolean picketSection(String id, String at) {
        checks.section(Stated.of(id), at + ".section");
        return true;
    }
}
