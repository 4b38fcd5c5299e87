package plumbleaf.web.room;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import org.springframework.stereotype.Component;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Entry;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Link;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Picture;
import plumbleaf.web.page.Room;
import plumbleaf.web.page.RoomView;
import plumbleaf.web.page.RoomView.JobHead;
import plumbleaf.web.page.Unit;
import plumbleaf.web.page.WalkView;
import plumbleaf.web.store.StoredJob;

/** Fills each room for a job, and applies an edit to a job's text. */
@Component
public class Rooms {
    private static final String NEW_PULL =
            "{ \"force\": \"75 lb\", \"at\": \"54\\\"\", \"low\": \"3\\\"\", \"movedLow\": \"0\\\"\","
                    + " \"high\": \"60\\\"\", \"movedHigh\": \"0\\\"\" }";

    /** The job's name as its file has it. */
    public static String titleOf(String document) {
        return DocumentText.of(document).value("title").orElse("Untitled job");
    }

    private final Bench bench;
    private final PaperShelf shelf;
    private final OwnBuilds builds;
    private final QuestionPhotos photos;
    private final GateSearches searches;

    Rooms(Bench bench, PaperShelf shelf, OwnBuilds builds, QuestionPhotos photos, GateSearches searches) {
        this.searches = searches;
        this.photos = photos;
        this.builds = builds;
        this.bench = bench;
        this.shelf = shelf;
    }

    /** Everything that is wrong with a job file from outside; nothing where it is good. */
    public List<InputError> errors(String file, byte[] bytes) {
        return bench.read(file, bytes).errors();
    }

    /** The styles a run may have. */
    public List<Choice> styles() {
        return Choices.styles(bench.catalogue());
    }

    /** A job, designed; nothing where its file is wrong. */
    public Optional<Design> design(StoredJob job) {
        return bench.open(job, Typed.NOTHING).design();
    }

    RoomView view(Room room, StoredJob job, Typed typed, Sight sight, Breadth breadth) {
        RoomView whole = whole(room, job, typed, sight, breadth);
        return sight == Sight.EVERYTHING ? whole : Veil.over(whole);
    }

    /** Its pictures are drawn while its panels are filled: each takes half of an answer. */
    private RoomView whole(Room room, StoredJob job, Typed typed, Sight sight, Breadth breadth) {
        Opened opened = bench.open(job, typed);
        ForkJoinTask<List<Picture>> drawn = ForkJoinTask.adapt(() -> opened.design()
                        .map(design -> pictures(room, design, opened, sight, breadth))
                        .orElse(List.of()))
                .fork();
        List<Panel> panels = switch (room) {
            case GROUND -> GroundRoom.panels(opened);
            case LINE ->
                and(
                        LineRoom.panels(opened, bench.fitPrices(opened), bench.spacingPrices(opened)),
                        again(opened, "runs"));
            case GATES -> and(GatesRoom.panels(opened, searches), again(opened, "gates"));
            case STRENGTH -> StrengthRoom.panels(opened);
            case STOCK -> and(StockRoom.panels(opened, bench.yard(), bench.itemNames()), SiteLog.panel(opened));
            case MONEY -> and(MoneyRoom.panels(opened, bench.offers(opened)), PriceKeeping.panel(opened, bench));
            case PAPERS -> new PapersRoom(opened, shelf, sight, breadth).panels();
        };
        List<Note> gaps = Notes.inAreas(opened.findings(), List.of("draft"));
        if (!gaps.isEmpty() && (room == Room.GROUND || room == Room.LINE || room == Room.GATES)) {
            panels = new ArrayList<>(panels);
            panels.add(0, Panel.of("Not filled in yet", "").withNotes(gaps));
        }
        panels = InMetric.of(panels, opened);
        String verdict = opened.design().map(design -> design.verdict().key()).orElse("");
        List<Link> links = switch (room) {
            case PAPERS -> new PapersRoom(opened, shelf, sight, breadth).links();
            case GATES -> cheaper(opened);
            case STOCK -> StockRoom.links(opened, sight == Sight.EVERYTHING);
            case MONEY ->
                opened.job().stream()
                        .filter(asked -> !asked.money().offer().options().isEmpty())
                        .map(asked ->
                                new Link("What several options come to together", "/jobs/" + job.id() + "/together"))
                        .toList();
            default -> List.of();
        };
        return new RoomView(
                room, head(opened), verdict, drawn.join(), panels, links, List.of(), unshown(panels, typed));
    }

    /** The proof of every search that is over, as a table. */
    private List<Link> cheaper(Opened opened) {
        return opened.job().stream()
                .flatMap(job -> job.gates().stream())
                .filter(gate -> searches.of(opened, gate.id())
                        .flatMap(GateSearching::proof)
                        .isPresent())
                .map(gate -> new Link(
                        "Every cheaper build of " + gate.id() + " and what it fails",
                        "/jobs/" + opened.stored().id() + "/gates/cheaper.csv?gate=" + gate.id()))
                .toList();
    }

    /** @param number from 1; past the end it is the last */
    WalkView walk(StoredJob job, int number, Typed typed) {
        Opened opened = bench.open(job, typed);
        List<WalkSteps.Step> steps = new ArrayList<>(WalkSteps.of(opened));
        int last = steps.size() + 1;
        int at = Math.max(1, Math.min(number, last));
        if (at == last) steps.add(Leaving.of(opened, bench));
        List<String> names =
                new ArrayList<>(steps.stream().map(WalkSteps.Step::name).toList());
        if (at < last) names.add(Leaving.NAME);
        WalkSteps.Step step = steps.get(at - 1);
        String verdict = opened.design().map(design -> design.verdict().key()).orElse("");
        List<Panel> panels = InMetric.of(step.panels(), opened);
        RoomView view = new RoomView(
                Room.GROUND, head(opened), verdict, List.of(), panels, List.of(), List.of(), unshown(panels, typed));
        String stand = opened.design()
                .map(design -> design.quote().price().total().text() + " as it stands")
                .orElse("");
        return new WalkView(view, names, at, step.why(), stand, photos.of(job.id(), step.name()));
    }

    private List<Picture> pictures(Room room, Design design, Opened opened, Sight sight, Breadth breadth) {
        Pictures pictures = new Pictures(design, new Subjects(design), new Handles(opened.text(), design), breadth);
        return switch (room) {
            case GROUND -> pictures.sites();
            case LINE -> pictures.profiles();
            case GATES ->
                design.gates().stream()
                        .flatMap(gate -> pictures.gate(gate).stream())
                        .toList();
            case STRENGTH -> pictures.strength();
            case STOCK -> pictures.stock();
            case MONEY -> List.of(pictures.waterfall());
            case PAPERS -> new PapersRoom(opened, shelf, sight, breadth).pages();
        };
    }

    /** What is made once more: copies in this job, builds of the house in any. */
    private Panel again(Opened opened, String list) {
        List<Panel.Press> presses = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < opened.text().count(list); i++) {
            String id = opened.text().value(list + "[" + i + "].id").orElse("");
            if (id.isEmpty()) continue;
            presses.add(new Panel.Press("Copy " + id, "copy/" + id));
            entries.addAll(BuildForm.entries(opened, builds, list, id));
        }
        if (list.equals("gates")) entries.add(0, Ledger.GATE.entry(opened));
        return Panel.of("More, copies, and builds of your own", "")
                .withPresses(presses)
                .withEntries(entries);
    }

    private static List<Panel> and(List<Panel> panels, Panel last) {
        List<Panel> all = new ArrayList<>(panels);
        all.add(last);
        return all;
    }

    /** Why the last change was not kept, where none of the fields says so. */
    private static String unshown(List<Panel> panels, Typed typed) {
        for (Panel panel : panels) {
            for (Entry entry : panel.entries()) if (entry.list().equals(typed.path())) return "";
            for (Field field : panel.fields()) if (field.path().equals(typed.path())) return "";
            for (Panel.Strip strip : panel.strips())
                for (Field field : strip.fields()) if (field.path().equals(typed.path())) return "";
        }
        return typed.problem();
    }

    Edited apply(StoredJob job, Edit edit) {
        return apply(job, List.of(edit));
    }

    Edited apply(StoredJob job, List<Edit> edits) {
        return edits.size() == 1 && PacketOrder.isAt(edits.get(0).path())
                ? inPacket(job, edits.get(0))
                : bench.apply(job, edits);
    }

    /** The job with a paper in another place of its packet, or left out. */
    private Edited inPacket(StoredJob job, Edit edit) {
        Opened opened = bench.open(job, Typed.NOTHING);
        Optional<PacketOrder> order = shelf.order(opened);
        if (order.isEmpty()) return new Edited.Refused(edit.path(), "There are no papers of this job yet.");
        return order.get()
                .with(edit.path(), edit.value())
                .<Edited>map(now -> new Edited.Fine(
                        job.title(),
                        now.on(opened.text()).text(),
                        edit.path() + ": "
                                + (edit.value().isBlank()
                                        ? "left out"
                                        : "place " + edit.value().strip())))
                .orElseGet(() -> new Edited.Refused(
                        edit.path(),
                        "This is no place; write 1 for the first, 2 for the second, or nothing to leave it out."));
    }

    /** The job with the prices it is quoted at kept in it, or with none. */
    Edited withPrices(StoredJob job, boolean kept) {
        return PriceKeeping.on(bench.open(job, Typed.NOTHING), bench, kept);
    }

    /** Works out what every run costs racked, stepped and level top; the room shows it until the job changes. */
    void priceFits(StoredJob job) {
        bench.priceFits(bench.open(job, Typed.NOTHING));
    }

    /** The job with one more item written down. */
    Edited written(StoredJob job, Ledger ledger, Map<String, String> typed) {
        return bench.written(job, ledger, typed);
    }

    /** The job with one more shot, in the widest stretch that nobody has measured. */
    Edited withNewShot(StoredJob job) {
        Opened opened = bench.open(job, Typed.NOTHING);
        return NewShot.in(opened)
                .<Edited>map(shot -> new Edited.Fine(
                        job.title(),
                        opened.text().appended("ground.shots", shot.json()).text(),
                        "shot " + shot.id() + " at " + shot.station() + " of " + shot.run()))
                .orElseGet(() -> new Edited.Refused("", "There is no stretch left without a shot."));
    }

    /** The job with a gate or a run once more. */
    Edited withCopy(StoredJob job, String thing) {
        return Copies.of(bench.open(job, Typed.NOTHING), thing);
    }

    /** The job with another text, or why that does not read. */
    Edited read(StoredJob job, String text, String what, String place) {
        List<InputError> errors =
                bench.read("the job", text.getBytes(StandardCharsets.UTF_8)).errors();
        if (errors.isEmpty()) return new Edited.Fine(titleOf(text), text, what);
        InputError first = errors.get(0);
        return new Edited.Refused(place, first.field() + ": " + first.problem() + "; " + first.cure() + ".");
    }

    /** A pull test to be filled in: what a hand scale usually pulls, no reading yet. */
    Edited withNewPull(StoredJob job, String gate, String post) {
        Opened opened = bench.open(job, Typed.NOTHING);
        boolean known = post.equals("hingePost") || post.equals("latchPost");
        String at = "gates[" + gate + "]." + post + ".support";
        if (!known
                || (opened.text().value(at + ".kind").isEmpty()
                        && opened.text().value(at).isEmpty()))
            return new Edited.Refused("", "Say first that the post stands already.");
        DocumentText text = new Edit(
                        at + ".feel",
                        Unit.WORDS,
                        opened.text().value(at + ".feel").orElse("unknown"))
                .on(opened.text());
        return new Edited.Fine(
                job.title(),
                text.appended(at + ".tests", NEW_PULL).text(),
                "a pull test on the " + post + " of " + gate);
    }

    String valueAt(StoredJob job, String path) {
        if (PacketOrder.isAt(path))
            return shelf.order(bench.open(job, Typed.NOTHING))
                    .map(order -> order.place(path))
                    .orElse("");
        return path.isEmpty() ? "" : DocumentText.of(job.document()).value(path).orElse("");
    }

    private static JobHead head(Opened opened) {
        StoredJob job = opened.stored();
        HandSketch hand = HandSketch.of(opened.text());
        return new JobHead(
                job.id().text(),
                job.title(),
                job.version(),
                job.undo(),
                job.redo(),
                hand.svg(),
                hand.words(),
                opened.text().units() == DisplayUnits.METRIC);
    }
}
