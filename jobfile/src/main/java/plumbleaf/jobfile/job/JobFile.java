package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.OwnParts;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Assumption;
import plumbleaf.engine.job.Builds;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.PacketPaper;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.input.Intake;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.ObjectNode;

/**
 * Reads and writes job files. What is written reads back as the same job, byte for byte the same file when written again; values that
 * were assumed stay out of it. Runs and gates that a draft still lacks something of are not in the job: to keep them, save the tree
 * that was read, not the job made from it.
 */
public final class JobFile {
    public static final String FORMAT = "plumbleaf-job";
    public static final int VERSION = 1;
    private static final TextKind<String> FORMAT_NAME =
            TextKind.oneOf("a format that is read here", List.of(FORMAT), word -> word);

    private final Intake intake;
    private final Catalogue catalogue;
    private final List<Run> runs = new ArrayList<>();
    private final List<Gate> gates = new ArrayList<>();
    private final List<Integer> runAt = new ArrayList<>();
    private final List<Integer> gateAt = new ArrayList<>();
    private final Set<String> unfinished = new LinkedHashSet<>();

    private JobFile(String file, Catalogue catalogue) {
        this.intake = new Intake(file);
        this.catalogue = catalogue;
    }

    /**
     * Reads the bytes of a job file.
     *
     * @param file as the user named it, for the errors
     * @param catalogue what names of sections, styles and hardware are checked against
     */
    public static JobReading read(String file, byte[] bytes, Catalogue catalogue) {
        JobFile reader = new JobFile(file, catalogue);
        return reader.finish(reader.intake.open(bytes));
    }

    /** As {@link #read(String, byte[], Catalogue)}, from a text. */
    public static JobReading read(String file, String text, Catalogue catalogue) {
        JobFile reader = new JobFile(file, catalogue);
        return reader.finish(reader.intake.open(text));
    }

    /** As {@link #read(String, byte[], Catalogue)}, from a tree, such as one that was edited. */
    public static JobReading read(String file, Node root, Catalogue catalogue) {
        JobFile reader = new JobFile(file, catalogue);
        return reader.finish(reader.intake.open(root));
    }

    /** The keys that are asked for when this text is read, by the object they belong to: for the test that holds the schema true. */
    static Map<String, Set<String>> keysAskedFor(String text, Catalogue catalogue) {
        JobFile reader = new JobFile("keys", catalogue);
        reader.finish(reader.intake.open(text));
        return reader.intake.known();
    }

    private JobReading finish(Optional<Fields> root) {
        Optional<Job> job = root.map(this::job);
        List<InputError> errors = intake.finish();
        if (errors.isEmpty() && job.isPresent()) return new JobReading.Good(withAssumed(job.get()), gaps());
        return new JobReading.Bad(errors);
    }

    private Job job(Fields root) {
        head(root);
        OwnParts parts = PartsForm.read(root, catalogue);
        Job job = new Job(
                root.assumed("title", TextKind.WORDS, "Fence job", "no title given"),
                Open.of(root.given("date", TextKind.DATE)),
                root.assumed("display", Words.DISPLAY, DisplayUnits.US, Words.CUSTOM),
                root.words("styleFile"),
                SiteForm.read(root.object("site")),
                GroundForm.read(root.object("ground")),
                runs(root),
                gates(root),
                builds(root),
                ExistingForm.read(root.object("existing")),
                TermsForm.rules(root.object("rules")),
                MoneyForm.money(root.object("money")),
                LogForm.log(root),
                parts,
                root.values("notes", TextKind.WORDS),
                packet(root),
                intake.isDraft(),
                List.of());
        new JobChecks(job, catalogue.with(parts), runAt, gateAt, unfinished, root::refuseAt).all();
        return job;
    }

    private void head(Fields root) {
        root.needed("format", FORMAT_NAME, FORMAT);
        int version = root.neededCount("version", 1, 999, VERSION);
        if (version > VERSION)
            root.refuse(
                    "version",
                    "this file is of a later version",
                    "open it with the Plumbleaf that wrote it, or a later one");
        if (root.flag("draft")) intake.draft();
    }

    private static List<PacketPaper> packet(Fields root) {
        List<PacketPaper> papers = root.values("packet", Words.PACKET_PAPER);
        for (int i = 0; i < papers.size(); i++)
            if (papers.subList(0, i).contains(papers.get(i)))
                root.refuse("packet", papers.get(i).key() + " is in it twice", "name each paper once");
        return papers;
    }

    private List<Run> runs(Fields root) {
        List<Fields> all = root.objects("runs");
        for (int i = 0; i < all.size(); i++) {
            Run run = RunForm.read(all.get(i), i, catalogue);
            if (all.get(i).incomplete()) {
                unfinished.add(run.id());
                continue;
            }
            runs.add(run);
            runAt.add(i);
        }
        return runs;
    }

    private List<Gate> gates(Fields root) {
        List<Fields> all = root.objects("gates");
        for (int i = 0; i < all.size(); i++) {
            Gate gate = GateForm.read(all.get(i), i, runs);
            if (all.get(i).incomplete() || unfinished.contains(gate.run())) {
                unfinished.add(gate.id());
                continue;
            }
            gates.add(gate);
            gateAt.add(i);
        }
        return gates;
    }

    private Builds builds(Fields root) {
        List<String> runIds = new ArrayList<>();
        for (Run run : runs) runIds.add(run.id());
        List<String> gateIds = new ArrayList<>();
        for (Gate gate : gates) gateIds.add(gate.id());
        return BuildsForm.read(root, runIds, gateIds, unfinished);
    }

    private Job withAssumed(Job job) {
        List<Assumption> assumed = new ArrayList<>();
        for (Intake.LeftOut left : intake.leftOut())
            fieldInJob(left.field()).ifPresent(field -> assumed.add(new Assumption(field, left.value(), left.why())));
        return new Job(
                job.title(),
                job.date(),
                job.display(),
                job.styleFile(),
                job.site(),
                job.ground(),
                job.runs(),
                job.gates(),
                job.builds(),
                job.existing(),
                job.rules(),
                job.money(),
                job.log(),
                job.parts(),
                job.notes(),
                job.packet(),
                job.draft(),
                assumed);
    }

    /** The field as it is numbered among the runs and gates of the job; none where a draft has left its run or gate out. */
    private Optional<String> fieldInJob(String field) {
        if (field.startsWith("runs[")) return renumbered(field, "runs", runAt);
        if (field.startsWith("gates[")) return renumbered(field, "gates", gateAt);
        return Optional.of(field);
    }

    private static Optional<String> renumbered(String field, String list, List<Integer> at) {
        int close = field.indexOf(']');
        int index = at.indexOf(Integer.parseInt(field.substring(list.length() + 1, close)));
        return index < 0 ? Optional.empty() : Optional.of(list + "[" + index + field.substring(close));
    }

    private List<Finding> gaps() {
        List<Finding> gaps = new ArrayList<>();
        for (Intake.Gap gap : intake.gaps())
            gaps.add(Checked.note(
                    "draft.missing",
                    Severity.CANNOT_SAY,
                    gap.field(),
                    gap.field() + " is not filled in yet: " + gap.what() + " is needed.",
                    Basis.job("the job is a draft")));
        return gaps;
    }

    /** The job as a file. */
    public static String write(Job job) {
        return JsonWriter.write(tree(job));
    }

    /** The job as a tree. */
    public static ObjectNode tree(Job job) {
        Set<String> assumed = new LinkedHashSet<>();
        for (Assumption assumption : job.assumed()) assumed.add(assumption.field());
        Entries out = new Entries(assumed);
        out.words("format", FORMAT).count("version", VERSION);
        out.words("title", job.title())
                .putIfAny("date", TextKind.DATE, job.date().value())
                .put("display", Words.DISPLAY, job.display())
                .words("styleFile", job.styleFile())
                .flag("draft", job.draft());
        out.object("site", site -> SiteForm.write(job.site(), site));
        out.object("ground", ground -> GroundForm.write(job.ground(), ground));
        out.objects("runs", job.runs(), RunForm::write);
        out.objects("gates", job.gates(), GateForm::write);
        BuildsForm.write(job.builds(), out);
        out.object("existing", existing -> ExistingForm.write(job.existing(), existing));
        out.object("rules", rules -> TermsForm.writeRules(job.rules(), rules));
        out.object("money", money -> MoneyForm.writeMoney(job.money(), money));
        LogForm.write(job.log(), out);
        PartsForm.write(job.parts(), out);
        out.values("notes", TextKind.WORDS, job.notes());
        out.values("packet", Words.PACKET_PAPER, job.packet());
        return out.build();
    }
}
