package plumbleaf.engine.job;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * What is said of a pool's barrier beyond the fence itself.
 *
 * @param runs ids of the runs that close the pool off; empty for all of them
 * @param poolInside whether the pool lies on the inside of those runs
 * @param height least height asked here, where local code asks for more than the model code
 * @param lookedOutside whether somebody has looked for what can be climbed on the outside
 * @param hard stretches over concrete or another solid surface
 * @param climbables what stands outside and can be climbed
 */
public record PoolBarrier(
        List<String> runs,
        boolean poolInside,
        Stated<Length> height,
        boolean lookedOutside,
        List<RunStretch> hard,
        List<Climbable> climbables,
        List<PoolGateSaid> gates) {
    public PoolBarrier {
        runs = List.copyOf(runs);
        hard = List.copyOf(hard);
        climbables = List.copyOf(climbables);
        gates = List.copyOf(gates);
    }

    /** A pool of which nothing is said: every run closes it off, it lies inside, and nobody has looked outside. */
    public static PoolBarrier unsaid() {
        return new PoolBarrier(List.of(), true, Stated.open(), false, List.of(), List.of(), List.of());
    }

    public boolean has(Run run) {
        return !run.isLoneGate() && (runs.isEmpty() || runs.contains(run.id()));
    }

    /** A lone gate belongs to it where its run is named, or where no run is. */
    public boolean has(Gate gate) {
        return runs.isEmpty() || runs.contains(gate.run());
    }

    public PoolGateSaid gate(String id) {
        return gates.stream().filter(said -> said.gate().equals(id)).findFirst().orElse(PoolGateSaid.unsaid(id));
    }
}
