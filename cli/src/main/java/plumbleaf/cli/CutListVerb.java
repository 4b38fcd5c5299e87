package plumbleaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.cutlist.CutList;
import plumbleaf.jobfile.cutlist.CutListFile;
import plumbleaf.jobfile.cutlist.SawEntry;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.result.ResultFile;

/** Plans cut lists of the shop's own, for no job. */
@Command(
        name = "cutlist",
        description = "Plans cut lists of your own, for no job: which pieces come from which bar, at least cost, with"
                + " the proof.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "A list is a comma-separated table: what,length,count,price,mark",
            "  what    piece, bar, or offcut: yours, and used before anything is bought",
            "  length  like 6' 2-1/2\", 20 ft or 1380 mm; a piece's from tip to tip",
            "  count   a bar without one is bought as needed",
            "  price   of one bar in dollars; 1 for each counts bars",
            "  mark    what a piece is called",
            "and for slanted ends first_deg,second_deg,ends,depth: angles from square,",
            "parallel or opposed, and where two pieces may share a cut, the size of the",
            "section in the plane of that cut."
        })
final class CutListVerb implements Callable<Integer> {
    @Parameters(paramLabel = "LIST", arity = "1..*", description = "Cut lists, each planned by itself.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--kerf", paramLabel = "LENGTH", description = "What a cut takes; ${DEFAULT-VALUE}.")
    private String kerf = SawEntry.USUAL.kerf();

    @Option(
            names = "--trim",
            paramLabel = "LENGTH",
            description = "What comes off a bar's mill end, with a cut of its own; ${DEFAULT-VALUE}.")
    private String trim = SawEntry.USUAL.trim();

    @Option(names = "--keep", paramLabel = "LENGTH", description = "Rests from this length are kept; ${DEFAULT-VALUE}.")
    private String keep = SawEntry.USUAL.keep();

    @Option(names = "--metric", description = "Say lengths in millimeters.")
    private boolean metric;

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        List<InputError> errors = new ArrayList<>();
        SawRules saw = new SawEntry(kerf, trim, keep)
                .rules("plumbleaf cutlist", List.of("--kerf", "--trim", "--keep"), errors);
        List<CutList> lists = new ArrayList<>();
        for (Path file : files) lists.add(read(file, errors));
        if (!errors.isEmpty()) throw new BadInput(errors);
        List<CutPlan> plans = new ArrayList<>();
        for (CutList list : lists)
            list.planned(new ProvenCutPlanner(), saw, CutTask.USUAL_STEPS)
                    .match(
                            read -> plans.add(say(list, read.is(), !plans.isEmpty())),
                            refused -> errors.add(InputError.ofFile(list.name(), refused.problem(), refused.cure())));
        answer.document(
                Json.object().put("cutPlans", plans, ResultFile::cutPlan).build());
        // One list that cannot be cut does not hold up the others.
        if (!errors.isEmpty()) throw new BadInput(errors);
        return ExitCode.FINE;
    }

    private CutPlan say(CutList list, CutPlan plan, boolean another) {
        if (another) answer.say("");
        answer.say(CutText.lines(list.name(), plan, metric ? DisplayUnits.METRIC : DisplayUnits.US));
        return plan;
    }

    private static CutList read(Path file, List<InputError> errors) {
        CutListFile.Answer read =
                CutListFile.read(file.toString(), new String(JobDoor.bytes(file), StandardCharsets.UTF_8));
        errors.addAll(read.errors());
        return read.list();
    }
}
