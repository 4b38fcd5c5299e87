package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.line.GatePlace;
import plumbleaf.engine.line.PostSizes;
import plumbleaf.engine.quantity.Length;

/**
 * What every run and gate is built of, by id, in the order of the job.
 *
 * @param chosen gates whose whole build came out of the search, depth included
 */
record Picks(List<PickedRun> runs, Map<String, PickedGate> gates, List<String> chosen) implements PostSizes {
    Picks {
        runs = List.copyOf(runs);
        chosen = List.copyOf(chosen);
        gates = Collections.unmodifiableMap(new LinkedHashMap<>(gates));
    }

    PickedRun of(Run run) {
        return runs.stream()
                .filter(pick -> pick.run().equals(run.id()))
                .findFirst()
                .orElseThrow();
    }

    PickedGate of(Gate gate) {
        PickedGate pick = gates.get(gate.id());
        if (pick == null) throw new IllegalArgumentException("No build for gate " + gate.id());
        return pick;
    }

    /** The cheapest build that passes takes the place of the usual one; where none passes the usual one stays. */
    Picks with(GateChoice choice) {
        Map<String, PickedGate> changed = new LinkedHashMap<>(gates);
        List<String> found = new ArrayList<>(chosen);
        choice.choice().cheapest().ifPresent(best -> {
            changed.put(choice.gate(), best.build());
            found.add(choice.gate());
        });
        return new Picks(runs, changed, found);
    }

    /** These builds for a job that pins other things of its runs and gates: what it pins counts, the rest stays as it was picked. */
    Picks pinnedBy(Job job, UsualBuilds usual) {
        List<PickedRun> fences = job.runs().stream()
                .map(run -> usual.of(run, job.builds().of(run)))
                .toList();
        Map<String, PickedGate> changed = new LinkedHashMap<>(gates);
        for (Gate gate : job.gates()) {
            if (!job.builds().of(gate).isOpen())
                changed.put(gate.id(), usual.of(gate, job.builds().of(gate)));
        }
        return new Picks(fences, changed, chosen);
    }

    @Override
    public Length post(Run run) {
        return of(run).post().depth();
    }

    @Override
    public Length terminal(Run run) {
        return of(run).terminal().depth();
    }

    @Override
    public Length postAt(Run run, double stationIn) {
        return of(run).postAt(stationIn).depth();
    }

    @Override
    public Length terminalAt(Run run, double stationIn) {
        return of(run).terminalAt(stationIn).depth();
    }

    @Override
    public Optional<Length> panel(Run run) {
        return of(run).panel();
    }

    @Override
    public boolean isRound(Run run) {
        return of(run).post().isRound();
    }

    @Override
    public Length hole(Run run) {
        return of(run).hole();
    }

    @Override
    public Length holeAt(Run run, double stationIn) {
        return of(run).holeAt(stationIn);
    }

    /** So much of a gate as its line is laid out from. */
    GatePlace place(Gate gate, Run run) {
        Side first = run.outside() == Side.RIGHT ? Side.LEFT : Side.RIGHT;
        Length hole = of(gate).hole().diameter();
        return GatePlace.of(gate, run, gatePost(gate, first), gatePost(gate, first.other()), hole);
    }

    /** The post on a side of the gate, seen from outside. Where it is not said which post hangs the leaf, both stand as wide as the wider. */
    private Length gatePost(Gate gate, Side side) {
        PickedGate pick = of(gate);
        Length hinge = pick.hingePost().depth();
        Length latch = pick.latchPost().depth();
        Optional<Side> hung = gate.kind()
                .match(
                        swing -> swing.hinge().value(),
                        pair -> Optional.of(Side.LEFT),
                        slide -> Optional.of(slide.opensTo()),
                        flagged -> none());
        if (hung.isEmpty()) return hinge.compareTo(latch) > 0 ? hinge : latch;
        return hung.get() == side ? hinge : latch;
    }

    private static Optional<Side> none() {
        return Optional.empty();
    }
}
