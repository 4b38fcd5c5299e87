package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.labour.TaskVariance;
import plumbleaf.engine.labour.Variances;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.jobfile.result.ResultFile;

/** The estimate against what was written down. */
@Command(
        name = "hours",
        description = "Holds the hours written down against the estimate, task by task.",
        mixinStandardHelpOptions = true)
final class HoursVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file, with its actuals.")
    private Path file = Path.of("");

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Design design = Designed.from(file).design();
        List<TaskVariance> tasks =
                Variances.of(design.quote().labour(), design.job().log().hours());
        answer.document(ResultFile.hours(design.job().title(), tasks));
        Columns columns = new Columns("lrrrrr");
        columns.row("task", "estimated", "hours", "done", "hours", "over");
        for (TaskVariance task : tasks)
            columns.row(
                    task.name(),
                    DecimalText.upTo(task.estimatedQuantity(), 1),
                    DecimalText.fixed(task.estimatedHours(), 1),
                    DecimalText.upTo(task.doneQuantity(), 1),
                    DecimalText.fixed(task.takenHours(), 1),
                    task.takenHours() == 0 ? "" : signed(task.overHours()));
        answer.say(columns.lines(0));
        answer.say("Over: beyond what the estimate allows for the quantity done. Hours are of one person.");
        return ExitCode.FINE;
    }

    private static String signed(double hours) {
        return (hours > 0 ? "+" : "") + DecimalText.fixed(hours, 1);
    }
}
