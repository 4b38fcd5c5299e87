package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.result.ResultFile;

/** Which pieces come from which bar, at least cost. */
@Command(
        name = "cut",
        description = "Says which pieces come from which bar, at least cost, with the proof.",
        mixinStandardHelpOptions = true)
final class CutVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Mixin
    private YardDoor yard = new YardDoor();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed designed = Designed.from(file, yard.yard());
        Takeoff takeoff = designed.design().quote().takeoff();
        answer.document(Json.object()
                .put("title", designed.design().job().title())
                .put("cutPlans", Json.list(takeoff.cutPlans(), ResultFile::cutPlan))
                .build());
        boolean first = true;
        for (CutPlan plan : takeoff.cutPlans()) {
            if (!first) answer.say("");
            first = false;
            answer.say(CutText.lines(
                    takeoff.nameOf(plan), plan, designed.design().job().display()));
        }
        if (takeoff.cutPlans().isEmpty()) answer.say(List.of("Nothing is cut from bars in this job."));
        designed.warn(answer);
        return designed.exitCode();
    }
}
