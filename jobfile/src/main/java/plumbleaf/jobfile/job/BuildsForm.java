package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plumbleaf.engine.job.Builds;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.RightLeaf;
import plumbleaf.engine.job.RunBuild;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Named;
import plumbleaf.jobfile.input.Nearest;
import plumbleaf.jobfile.input.TextKind;

/** {@code builds}: what the user pinned, under the id of the run or gate. */
final class BuildsForm {
    private BuildsForm() {}

    /**
     * @param runs ids of the job's runs
     * @param gates ids of the job's gates
     * @param unfinished ids of runs and gates that a draft still lacks something of
     */
    static Builds read(Fields job, List<String> runs, List<String> gates, Set<String> unfinished) {
        List<RunBuild> runBuilds = new ArrayList<>();
        List<GateBuild> gateBuilds = new ArrayList<>();
        List<String> all = new ArrayList<>(runs);
        all.addAll(gates);
        for (Named named : job.named("builds", "*")) {
            if (runs.contains(named.name())) runBuilds.add(run(named.name(), named.fields()));
            else if (gates.contains(named.name())) gateBuilds.add(gate(named.name(), named.fields()));
            else {
                run(named.name(), named.fields());
                gate(named.name(), named.fields());
                if (unfinished.contains(named.name())) continue;
                named.fields()
                        .refuse(
                                "",
                                "there is no run or gate " + named.name(),
                                Nearest.to(named.name(), all)
                                        .map(near -> "write " + near)
                                        .orElse("write the id of a run or gate"));
            }
        }
        return new Builds(runBuilds, gateBuilds);
    }

    private static RunBuild run(String id, Fields fields) {
        return new RunBuild(
                id,
                Open.of(fields.given("post", TextKind.WORDS)),
                Open.of(fields.given("hole", Words.HOLE)),
                Open.of(fields.given("depth", Words.DEPTH)));
    }

    private static GateBuild gate(String id, Fields fields) {
        return new GateBuild(
                id,
                Open.of(fields.given("frame", TextKind.WORDS)),
                fields.flag("flat"),
                Open.of(BracingForm.read(fields)),
                Open.of(fields.given("joint", Words.JOINT)),
                BracingForm.bracket(fields.object("bracket")),
                Open.of(fields.given("hingePost", TextKind.WORDS)),
                Open.of(fields.given("latchPost", TextKind.WORDS)),
                Open.of(fields.given("hole", Words.HOLE)),
                Open.of(fields.given("depth", Words.DEPTH)),
                Open.of(fields.given("latchHole", Words.HOLE)),
                Open.of(fields.given("latchDepth", Words.DEPTH)),
                rightLeaf(fields.object("rightLeaf")));
    }

    private static RightLeaf rightLeaf(Fields fields) {
        return new RightLeaf(
                Open.of(fields.given("frame", TextKind.WORDS)),
                fields.flag("flat"),
                Open.of(BracingForm.read(fields)),
                Open.of(fields.given("joint", Words.JOINT)),
                Open.of(fields.given("hinge", TextKind.WORDS)),
                Open.of(FillForm.given(fields)));
    }

    private static void write(RightLeaf leaf, Entries out) {
        out.putIfAny("frame", TextKind.WORDS, leaf.frame().value());
        out.flag("flat", leaf.flat());
        leaf.bracing().value().ifPresent(bracing -> BracingForm.write(bracing, out));
        out.putIfAny("joint", Words.JOINT, leaf.joint().value())
                .putIfAny("hinge", TextKind.WORDS, leaf.hinge().value());
        leaf.fill().value().ifPresent(fill -> FillForm.write(fill, out));
    }

    static void write(Builds builds, Entries job) {
        job.object("builds", out -> {
            for (RunBuild build : builds.runs())
                out.object(
                        build.run(),
                        entries -> entries.putIfAny(
                                        "post", TextKind.WORDS, build.post().value())
                                .putIfAny("hole", TextKind.LENGTH, build.hole().value())
                                .putIfAny(
                                        "depth", TextKind.LENGTH, build.depth().value()));
            for (GateBuild build : builds.gates())
                out.object(build.gate(), entries -> {
                    entries.putIfAny("frame", TextKind.WORDS, build.frame().value());
                    entries.flag("flat", build.flat());
                    build.bracing().value().ifPresent(bracing -> BracingForm.write(bracing, entries));
                    entries.object("bracket", bracket -> BracingForm.writeBracket(build.bracket(), bracket));
                    entries.putIfAny("joint", Words.JOINT, build.joint().value())
                            .putIfAny(
                                    "hingePost",
                                    TextKind.WORDS,
                                    build.hingePost().value())
                            .putIfAny(
                                    "latchPost",
                                    TextKind.WORDS,
                                    build.latchPost().value())
                            .putIfAny("hole", TextKind.LENGTH, build.hole().value())
                            .putIfAny("depth", TextKind.LENGTH, build.depth().value())
                            .putIfAny(
                                    "latchHole",
                                    TextKind.LENGTH,
                                    build.latchHole().value())
                            .putIfAny(
                                    "latchDepth",
                                    TextKind.LENGTH,
                                    build.latchDepth().value())
                            .object("rightLeaf", leaf -> write(build.rightLeaf(), leaf));
                });
        });
    }
}
