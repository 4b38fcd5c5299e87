package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.documents.Papers;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.jobfile.result.ResultFile;

/** A change order: the difference of two designs of a job. */
@Command(
        name = "change",
        description = "Says what a changed job costs, takes and builds beside the accepted one.",
        mixinStandardHelpOptions = true,
        footer = {"", "Both are designed and checked. Exit 3 when the changed one has a must-fix finding."})
final class ChangeVerb implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "ACCEPTED", description = "The job file as it was accepted.")
    private Path before = Path.of("");

    @Parameters(index = "1", paramLabel = "CHANGED", description = "The job file as it is to be.")
    private Path after = Path.of("");

    @Option(names = "--what", paramLabel = "TEXT", description = "The change in a sentence, for the paper.")
    private String what = "As drawn in the papers of the changed job.";

    @Option(names = "--out", paramLabel = "PDF", description = "Write the change order for signing.")
    private String out = "";

    @Mixin
    private IssuedBy by = new IssuedBy();

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed accepted = Designed.from(before);
        Designed changed = Designed.from(after);
        Difference difference = Difference.of(accepted.design(), changed.design());
        if (!out.isEmpty()) Written.bytes(Path.of(out), paper(accepted.design(), changed.design(), difference), over);
        answer.document(ResultFile.difference(changed.design().job().title(), difference));
        answer.say(lines(difference));
        if (!out.isEmpty()) answer.say("Wrote " + out + ".");
        changed.warn(answer);
        return changed.exitCode();
    }

    private byte[] paper(Design accepted, Design changed, Difference difference) {
        Money before = Statement.of(
                        accepted.quote().price(),
                        accepted.job().log().changes(),
                        accepted.job().money().billing())
                .contract();
        return Papers.changeOrder(changed, difference, what, before, by.options())
                .bytes();
    }

    private static List<String> lines(Difference difference) {
        if (difference.isNothing()) return List.of("The two come to the same.");
        List<String> lines = new ArrayList<>();
        lines.add("Price with tax: " + difference.price().signedText() + "; days on site: "
                + DecimalText.upTo(difference.siteDays(), 1));
        Columns parts = new Columns("ll");
        for (Difference.PartChange part : difference.parts())
            parts.row(part.part(), part.way().key());
        lines.addAll(parts.lines(2));
        Columns columns = new Columns("lrlr");
        for (Difference.LineChange line : difference.lines())
            columns.row(
                    line.name(),
                    DecimalText.upTo(line.before(), 2) + " -> " + DecimalText.upTo(line.after(), 2),
                    line.unit(),
                    line.amount().signedText());
        lines.add("Direct cost:");
        lines.addAll(columns.lines(2));
        return lines;
    }
}
