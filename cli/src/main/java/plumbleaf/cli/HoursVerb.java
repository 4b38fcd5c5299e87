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
import plumbleaf.engine.takeoff.ItemVariance;
import plumbleaf.jobfile.result.ResultFile;

/** The estimate against what was written down. */
@Command(
        name = "hours",
        description = "Holds hours and materials written down against the estimate, task by task and item by item.",
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
        List<ItemVariance> items =
                ItemVariance.of(design.quote().takeoff(), design.job().log().used());
        answer.document(ResultFile.hours(design.job().title(), tasks, items));
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
        answer.say("");
        answer.say(materials(items));
        return ExitCode.FINE;
    }

    private static List<String> materials(List<ItemVariance> items) {
        Columns columns = new Columns("llrrrrr");
        columns.row("item", "unit", "ordered", "used", "returned", "over", "worth");
        for (ItemVariance item : items)
            columns.row(
                    item.name(),
                    item.unit(),
                    DecimalText.upTo(item.ordered(), 2),
                    item.records() == 0 ? "" : DecimalText.upTo(item.used(), 2),
                    item.records() == 0 ? "" : DecimalText.upTo(item.returned(), 2),
                    item.records() == 0 ? "" : (item.over() > 0 ? "+" : "") + DecimalText.upTo(item.over(), 2),
                    item.records() == 0 ? "" : item.worth().signedText());
        return columns.lines(0);
    }

    private static String signed(double hours) {
        return (hours > 0 ? "+" : "") + DecimalText.fixed(hours, 1);
    }
}
