package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.choose.Candidate;
import plumbleaf.engine.choose.Finer;
import plumbleaf.engine.choose.Rejected;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.HangingAsked;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.design.TradeNames;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.MetricWords;
import plumbleaf.jobfile.edit.JobEdit;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.jobfile.offer.BuildEdits;
import plumbleaf.jobfile.result.ResultFile;

/** The cheapest build of each gate that passes, and why every cheaper one does not. */
@Command(
        name = "choose",
        description = "Finds the cheapest build of each gate that passes, and says why every cheaper one fails.",
        mixinStandardHelpOptions = true,
        footer = {"", "What the job pins under builds stays, unless --free is given. Exit 3 where no build passes."})
final class ChooseVerb implements Callable<Integer> {
    private static final int SHOWN = 8;

    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Option(names = "--gate", paramLabel = "ID", description = "This gate only.")
    private String only = "";

    @Option(names = "--free", description = "Leave everything about the gates' builds open, whatever the job pins.")
    private boolean free;

    @Option(
            names = "--hinges",
            description = "Try every hinge of the catalog too, of a slide every set of rollers, whatever the job says.")
    private boolean hinges;

    @Option(names = "--tails", description = "Of a slide gate, try tails of 40, 50 and 60 percent of its opening too.")
    private boolean tails;

    @Option(
            names = "--sides",
            description =
                    "Try both hinge sides too, whatever the job says; how the leaf swings over the ground counts then.")
    private boolean sides;

    @Option(names = "--out", paramLabel = "JOB", description = "Write the job with the chosen builds pinned.")
    private String out = "";

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private HouseStyles styles = new HouseStyles();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Node root = JobDoor.tree(file, styles.catalogueOf(file));
        Job job = read(root);
        List<String> gates = new ArrayList<>();
        for (Gate gate : job.gates()) {
            if (only.isEmpty() || gate.id().equals(only)) gates.add(gate.id());
        }
        if (gates.isEmpty())
            throw BadInput.of(
                    file.toString(),
                    only.isEmpty() ? "there is no gate in this job" : "there is no gate " + only,
                    only.isEmpty() ? "choose is for gates" : "name a gate of this job");
        if (free) for (String gate : gates) root = NodePath.of("builds." + gate).remove(root);
        List<GateChoice> choices = choices(read(root), gates);
        for (GateChoice choice : choices) root = pinned(root, job.gates(), choice);
        if (!out.isEmpty()) Written.text(Path.of(out), JsonWriter.write(root), over);
        answer.document(Json.object()
                .put("title", job.title())
                .put("choices", choices, ResultFile::choice)
                .build());
        for (GateChoice choice : choices) answer.say(said(job, lines(choice, slides(job.gates(), choice))));
        if (!out.isEmpty()) answer.say("Wrote " + out + ".");
        boolean all =
                choices.stream().allMatch(choice -> choice.choice().cheapest().isPresent());
        return all ? ExitCode.FINE : ExitCode.MUST_FIX;
    }

    private Job read(Node root) {
        return JobFile.read(file.toString(), root, styles.catalogueOf(file)).match(good -> good.is(), bad -> {
            throw new BadInput(bad.all());
        });
    }

    private List<GateChoice> choices(Job job, List<String> gates) {
        PriceBook book = Books.of(file, job);
        HangingAsked asked = new HangingAsked(hinges, sides, tails);
        List<GateChoice> choices = new ArrayList<>();
        for (String gate : gates)
            choices.add(Designs.choose(job, styles.catalogueOf(file), Designed.standards(), book, gate, asked));
        return choices;
    }

    private static int number(List<Gate> gates, String id) {
        for (int i = 0; i < gates.size(); i++) if (gates.get(i).id().equals(id)) return i;
        throw new IllegalArgumentException("No gate " + id);
    }

    private static boolean slides(List<Gate> gates, GateChoice choice) {
        return gates.get(number(gates, choice.gate()))
                .kind()
                .match(swing -> false, pair -> false, is -> true, flagged -> false);
    }

    private static Node pinned(Node root, List<Gate> gates, GateChoice choice) {
        Gate gate = gates.get(number(gates, choice.gate()));
        Node changed = root;
        for (Candidate<PickedGate> best : choice.choice().best())
            changed = JobEdit.all(changed, BuildEdits.of(gate, best.build()))
                    .value()
                    .orElseThrow();
        return changed;
    }

    private List<String> said(Job job, List<String> lines) {
        MetricWords metric = TradeNames.metric(styles.catalogueOf(file), PriceBook.none(""));
        return lines.stream().map(line -> job.display().said(line, metric)).toList();
    }

    private static List<String> lines(GateChoice choice, boolean slides) {
        List<String> lines = new ArrayList<>();
        int all = choice.choice().all();
        lines.add(choice.gate() + ": " + all + (all == 1 ? " build" : " builds") + " in all");
        Columns passing = new Columns("llr");
        for (Candidate<PickedGate> best : choice.choice().best())
            passing.row("chosen", best.id(), best.price().text());
        for (Candidate<PickedGate> next : choice.choice().next())
            passing.row("next", next.id(), next.price().text());
        lines.addAll(passing.lines(2));
        if (passing.isEmpty()) lines.add("  No build passes.");
        lines.addAll(lessDrop(choice, slides));
        List<Rejected> rejected = choice.choice().rejected();
        if (passing.isEmpty() && rejected.size() > SHOWN) {
            lines.addAll(reasons(rejected));
            return lines;
        }
        lines.add("  " + failed(rejected.size(), all, passing.isEmpty()));
        for (Rejected one : rejected.subList(Math.max(0, rejected.size() - SHOWN), rejected.size()))
            lines.add("    " + said(one));
        if (rejected.size() > SHOWN)
            lines.add("    and " + (rejected.size() - SHOWN) + " cheaper still; --json lists them all");
        return lines;
    }

    private static String said(Rejected one) {
        return one.price().text() + "  " + one.id() + ": " + one.because().message();
    }

    /** Where nothing passes, the dearest ones say little of the rest: each kind of reason once, with how many builds it stops. */
    private static List<String> reasons(List<Rejected> rejected) {
        Map<String, List<Rejected>> kinds = new LinkedHashMap<>();
        for (Rejected one : rejected)
            kinds.computeIfAbsent(one.because().id(), key -> new ArrayList<>()).add(one);
        List<String> lines = new ArrayList<>();
        lines.add("  " + rejected.size() + " fail, for "
                + (kinds.size() == 1
                        ? "one reason; the last of them in order of price:"
                        : kinds.size() + " reasons; the last in order of price of each:"));
        for (List<Rejected> alike : kinds.values())
            lines.add("    " + alike.size() + " like " + said(alike.get(alike.size() - 1)));
        lines.add("    --json lists them all");
        return lines;
    }

    private static String failed(int failed, int all, boolean nothingPasses) {
        if (failed == 0 && all == 1) return "All of its build is given: nothing was left to choose.";
        if (failed == 0) return "None is cheaper.";
        if (nothingPasses) return failed == 1 ? "It fails, for a reason:" : failed + " fail, each for a reason:";
        return failed == 1 ? "1 cheaper one fails, for a reason:" : failed + " cheaper ones fail, each for a reason:";
    }

    /** What each further 1/16 in. less costs, of what comes after hanging in soft soil. */
    private static List<String> lessDrop(GateChoice choice, boolean slides) {
        if (choice.finer().isEmpty()) return List.of();
        Money chosen = choice.choice().best().get(0).price();
        Columns finer = new Columns("lrl");
        for (Finer<PickedGate> each : choice.finer())
            finer.row(
                    LengthText.inchesOnly(each.limit()) + " and less",
                    "+" + each.candidate().price().minus(chosen).text(),
                    each.candidate().id());
        List<String> lines = new ArrayList<>();
        lines.add(
                slides
                        ? "  What each further 1/16 in. less costs that its nose comes low to the receiver:"
                        : "  What each further 1/16 in. less of drop after hanging in soft soil costs:");
        lines.addAll(finer.lines(4));
        return lines;
    }
}
