package plumbleaf.engine.job;

import java.util.ArrayList;
import java.util.List;

/** What the user pinned; the rest is chosen. In the order of the file. */
public record Builds(List<RunBuild> runs, List<GateBuild> gates) {
    public Builds {
        runs = List.copyOf(runs);
        gates = List.copyOf(gates);
    }

    /** The build of a run; one with nothing pinned where the file says nothing. */
    public RunBuild of(Run run) {
        for (RunBuild build : runs) {
            if (build.run().equals(run.id())) return build;
        }
        return RunBuild.open(run.id());
    }

    /** With another build of the run it is of. */
    public Builds with(RunBuild changed) {
        List<RunBuild> all = new ArrayList<>(runs);
        all.removeIf(build -> build.run().equals(changed.run()));
        all.add(changed);
        return new Builds(all, gates);
    }

    /** The build of a gate; one with nothing pinned where the file says nothing. */
    public GateBuild of(Gate gate) {
        for (GateBuild build : gates) {
            if (build.gate().equals(gate.id())) return build;
        }
        return GateBuild.open(gate.id());
    }

    /** With another build of the gate it is of. */
    public Builds with(GateBuild changed) {
        List<GateBuild> all = new ArrayList<>(gates);
        all.removeIf(build -> build.gate().equals(changed.gate()));
        all.add(changed);
        return new Builds(runs, all);
    }
}
