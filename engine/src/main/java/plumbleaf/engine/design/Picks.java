package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
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

    /** These builds for a job that pins other things of its gates: what it pins counts, the rest stays as it was picked. */
    Picks pinnedBy(Job job, UsualBuilds usual) {
        Map<String, PickedGate> changed = new LinkedHashMap<>(gates);
        for (Gate gate : job.gates()) {
            if (!job.builds().of(gate).isOpen())
                changed.put(gate.id(), usual.of(job.builds().of(gate)));
        }
        return new Picks(runs, changed, chosen);
    }

    @Override
    public Length post(Run run) {
        return of(run).post().depth();
    }

    @Override
    public Length hole(Run run) {
        return of(run).hole();
    }

    /** The hinge and latch posts of a gate are as wide as the wider of the two: which is first turns with the hand. */
    @Override
    public Length firstPost(Gate gate) {
        PickedGate pick = of(gate);
        return pick.hingePost().depth().compareTo(pick.latchPost().depth()) > 0
                ? pick.hingePost().depth()
                : pick.latchPost().depth();
    }

    @Override
    public Length secondPost(Gate gate) {
        return firstPost(gate);
    }

    @Override
    public Length hole(Gate gate) {
        return of(gate).hole().diameter();
    }
}
