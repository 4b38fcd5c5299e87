package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.design.SearchTold;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.Builds;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.offer.FitPrices;
import plumbleaf.jobfile.offer.Offers;
import plumbleaf.jobfile.offer.SpacingPrices;
import plumbleaf.jobfile.offer.Together;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.stock.ItemNames;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.Yard;
import plumbleaf.web.books.HouseBooks;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.StoredJob;
import plumbleaf.web.yard.HouseYard;

/** Where a job's text becomes a job: reads it with the catalogue that comes with the program. */
@Component
class Bench {
    private static final int KEPT = 64;
    private static final int EDITED = 16;

    private final Catalogue catalogue;
    private final Standards standards = StandardTables.load().standards();
    private final CutPlanner planner = new ProvenCutPlanner();
    private final LastFew<String, Design> latest = new LastFew<>(KEPT);
    private final LastFew<String, Offers> offers = new LastFew<>(KEPT);
    private final LastFew<String, FitPrices> fits = new LastFew<>(KEPT);
    private final LastFew<String, SpacingPrices> spacings = new LastFew<>(KEPT);
    private final LastFew<String, List<PriceMovers.Mover>> movers = new LastFew<>(KEPT);
    private final LastFew<String, JobReading> readings = new LastFew<>(KEPT);

    /** The jobs that are being edited, each with the parts of its last two designs. */
    private final LastFew<JobId, Redesigner> edited = new LastFew<>(EDITED);

    private final HouseBooks books;
    private final HouseYard yard;

    Bench(HouseBooks books, OwnStyles styles, HouseYard yard) {
        this.catalogue = styles.addedTo(StandardCatalogue.load());
        this.books = books;
        this.yard = yard;
    }

    /** The options of a job, each designed; the same text always has the same ones. */
    Offers offers(Opened opened) {
        if (opened.design().isEmpty()) return new Offers(List.of(), List.of());
        Design base = opened.design().get();
        if (base.job().money().offer().options().isEmpty()) return new Offers(List.of(), List.of());
        return offers.of(
                opened.key(),
                () -> Offers.of(
                        "the job",
                        base,
                        catalogue,
                        job -> Designs.of(job, catalogue, standards, book(opened.taker(), job), planner)));
    }

    /** Those of these ids built together; nothing to tick where the job cannot be designed. */
    Ticked ticked(Opened opened, List<String> ids) {
        if (opened.design().isEmpty()) return new Ticked(List.of(), List.of(), "", "");
        Offers each = offers(opened);
        Together together = Together.of(
                opened.design().get(),
                each,
                ids,
                catalogue,
                job -> Designs.of(job, catalogue, standards, book(opened.taker(), job), planner));
        return Ticked.of(each, together);
    }

    /** What the runs of a job cost fitted each way, where somebody asked since the job last changed. */
    Optional<FitPrices> fitPrices(Opened opened) {
        return fits.known(opened.key());
    }

    /** What they cost with their posts nearer together, where somebody asked likewise. */
    Optional<SpacingPrices> spacingPrices(Opened opened) {
        return spacings.known(opened.key());
    }

    /** Several whole designs: only when asked, and one at a time. */
    void priceFits(Opened opened) {
        if (opened.design().isEmpty()) return;
        fits.of(
                opened.key(),
                () -> FitPrices.of(
                        opened.design().get(),
                        catalogue,
                        job -> Designs.of(job, catalogue, standards, book(opened.taker(), job), planner)));
        spacings.of(
                opened.key(),
                () -> SpacingPrices.of(
                        opened.design().get(),
                        catalogue,
                        job -> Designs.of(job, catalogue, standards, book(opened.taker(), job), planner)));
    }

    /** A search for the build of one gate: seconds of work, or minutes. */
    GateChoice search(Opened opened, String gate, SearchHow how, SearchTold told) {
        Job job = opened.job().orElseThrow();
        PriceBook book = book(opened.taker(), job);
        Builds builds = job.builds();
        Job asked = how.keepsPinned()
                ? job
                : job.withBuilds(new Builds(
                        builds.runs(),
                        builds.gates().stream()
                                .filter(each -> !each.gate().equals(gate))
                                .toList()));
        return Designs.choose(asked, catalogue, standards, book, gate, how.hanging(), told);
    }

    /** Several designs, once for each state of a job; the parts of the job's own last designs stay as they are. */
    List<PriceMovers.Mover> movers(Opened opened) {
        if (opened.design().isEmpty()) return List.of();
        TriedPrices tried = new TriedPrices(
                opened.design().get(),
                new Redesigner(catalogue, standards, planner),
                this::read,
                job -> book(opened.taker(), job));
        return movers.of(opened.key(), () -> PriceMovers.of(opened, tried));
    }

    /** The book as the job sees it, with the prices it keeps. */
    PriceBook book(Taker taker, Job job) {
        return PriceBooks.kept(job, today(taker, job));
    }

    /** What things are called where they are sold. */
    ItemNames itemNames() {
        return books.itemNames();
    }

    /** What can be bought, with the house's own styles. */
    Catalogue catalogue() {
        return catalogue;
    }

    /** The yard as it stands. */
    Yard yard() {
        return yard.yard();
    }

    /** The book as it stands today. */
    PriceBook today(Taker taker, Job job) {
        String name = job.money().priceBook();
        return books.book(name)
                .orElseGet(() -> PriceBook.none(name))
                .with(yard.yard().asSeenBy(taker).onHand());
    }

    /** The job priced from another book. */
    Design pricedFrom(Job job, PriceBook book) {
        return Designs.of(job, catalogue, standards, book, planner);
    }

    Opened open(StoredJob stored, Typed typed) {
        DocumentText text = DocumentText.of(stored.document());
        JobReading reading = remembered(text.text());
        Taker taker = taker(stored);
        String key = text.text()
                + reading.job().map(job -> "\u0000" + stand(taker, job)).orElse("");
        List<Finding> gaps = reading.match(JobReading.Good::gaps, bad -> List.of());
        Optional<Design> design = reading.job()
                .map(job -> designed(key, stored.id(), taker, job))
                .map(made -> gaps.isEmpty() ? made : made.with(gaps));
        Catalogue offered =
                reading.job().map(job -> catalogue.with(job.parts())).orElse(catalogue);
        return new Opened(stored, text, reading, design, offered, typed, key);
    }

    /** How the yard knows a job: by its number, whatever its title. */
    static Taker taker(StoredJob stored) {
        return new Taker(stored.title(), stored.id().text());
    }

    /** The books and the yard a design was made from; a job that has taken stock sees a yard of its own. */
    private String stand(Taker taker, Job job) {
        String own = yard.yard().knows(taker) ? "@" + taker.mark() : "";
        return books.version(job.money().priceBook()) + "@" + yard.version() + own;
    }

    /** The same text and book always come to the same design, so the latest few are kept. */
    private Design designed(String key, JobId id, Taker taker, Job job) {
        return latest.of(key, () -> redesigned(id, job, book(taker, job)));
    }

    /** What an edit leaves as it was is taken from the job's last designs. */
    private Design redesigned(JobId id, Job job, PriceBook book) {
        Redesigner one = edited.of(id, () -> new Redesigner(catalogue, standards, planner));
        synchronized (one) {
            return one.of(job, book);
        }
    }

    /** The text with an edit, or why it cannot be. */
    Edited apply(StoredJob stored, Edit edit) {
        return apply(stored, List.of(edit));
    }

    /** The same for several that belong together; the history names the first that puts something in. */
    Edited apply(StoredJob stored, List<Edit> edits) {
        Edit edit = edits.stream()
                .filter(each -> !each.value().isEmpty())
                .findFirst()
                .orElse(edits.get(0));
        DocumentText before = DocumentText.of(stored.document());
        DocumentText after;
        String place;
        try {
            after = before;
            for (Edit each : edits) after = each.on(after);
            place = before.numbered(edit.path());
        } catch (IllegalArgumentException notThere) {
            return new Edited.Refused(edit.path(), "This place is not in the job; load the page again.");
        }
        List<InputError> errors = remembered(after.text()).errors();
        if (!errors.isEmpty()) return new Edited.Refused(place, problem(errors, place));
        String title = after.value("title").orElse(stored.title());
        return new Edited.Fine(title, after.text(), what(before.value(edit.path()), place, edit));
    }

    /** The text with one more item of a list, or why it cannot be; the item's own trouble first. */
    Edited written(StoredJob stored, Ledger ledger, Map<String, String> typed) {
        DocumentText before = DocumentText.of(stored.document());
        String list = typed.getOrDefault("list", "");
        if (ledger == Ledger.POINT_FILE) return points(stored, before, typed);
        if (ledger == Ledger.OWN_STYLES) return styles(stored, before, typed);
        if (ledger.isOwnPart()) return ownPart(stored, before, ledger, typed);
        DocumentText after;
        String place;
        try {
            after = ledger.added(before, list, typed);
            place = before.numbered(list);
        } catch (IllegalArgumentException notThere) {
            return new Edited.Refused(list, "This place is not in the job; load the page again.");
        }
        List<InputError> errors = remembered(after.text()).errors();
        String item = ledger.itemPlace(before, place);
        for (InputError error : errors) {
            if (error.field().startsWith(item))
                return new Edited.Refused(
                        place,
                        error.field()
                                        .substring(Math.min(
                                                item.length() + 1, error.field().length())) + ": " + error.problem()
                                + "; " + error.cure() + ".");
        }
        if (!errors.isEmpty()) return new Edited.Refused(place, problem(errors, place));
        return new Edited.Fine(after.value("title").orElse(stored.title()), after.text(), ledger.what());
    }

    /** A style file is kept with the job, among its own parts; the server reads no file. */
    private Edited styles(StoredJob stored, DocumentText before, Map<String, String> typed) {
        List<String> rows = new ArrayList<>();
        for (String row : typed.getOrDefault("rows", "").split("\\R", -1))
            if (!row.isBlank()) rows.add(DocumentText.quoted(row.strip()));
        String item = "{ \"file\": \"styles.json\", \"rows\": [" + String.join(", ", rows) + "] }";
        DocumentText after = before.appended("parts", item);
        List<InputError> errors = read(after.text()).errors();
        return errors.isEmpty()
                ? new Edited.Fine(stored.title(), after.text(), "styles of one's own taken")
                : new Edited.Refused("parts+styles", problem(errors, "parts"));
    }

    /** One part from its maker's sheet, kept as a table of one row, as a pasted one is. */
    private Edited ownPart(StoredJob stored, DocumentText before, Ledger ledger, Map<String, String> typed) {
        String place = typed.getOrDefault("list", "");
        List<String> noLengths = OwnPartEntry.noLengths(ledger.blanks(), typed, before.units());
        if (!noLengths.isEmpty()) return new Edited.Refused(place, String.join(" ", noLengths));
        DocumentText after = before.appended("parts", OwnPartEntry.item(ledger.blanks(), typed, before.units()));
        List<InputError> errors = read(after.text()).errors();
        return errors.isEmpty()
                ? new Edited.Fine(stored.title(), after.text(), ledger.what())
                : new Edited.Refused(place, problem(errors, "parts"));
    }

    private Edited points(StoredJob stored, DocumentText before, Map<String, String> typed) {
        return PointPaste.into(before, stored.title(), typed)
                .match(
                        taken -> {
                            List<InputError> errors = read(taken.text()).errors();
                            return errors.isEmpty()
                                    ? taken
                                    : new Edited.Refused(PointPaste.LIST, problem(errors, "ground.shots"));
                        },
                        refused -> refused);
    }

    /** What is wrong with the field itself first; else with the job as a whole. */
    private static String problem(List<InputError> errors, String place) {
        List<InputError> own =
                errors.stream().filter(error -> error.field().equals(place)).toList();
        InputError first = own.isEmpty() ? errors.get(0) : own.get(0);
        String where = own.isEmpty() && !first.field().isEmpty() ? first.field() + ": " : "";
        return where + first.problem() + (first.cure().isEmpty() ? "." : "; " + first.cure() + ".");
    }

    private static String what(Optional<String> before, String place, Edit edit) {
        String now = edit.value().isBlank() ? "not said" : edit.unit().complete(edit.value());
        return place + ": " + before.orElse("not said") + " \u2192 " + now;
    }

    /** A job file from outside. */
    JobReading read(String file, byte[] bytes) {
        return JobFile.read(file, bytes, catalogue);
    }

    private JobReading read(String text) {
        return JobFile.read("the job", text, catalogue);
    }

    /** The same text always reads the same: what was read to be kept is read no second time to be shown. */
    private JobReading remembered(String text) {
        return readings.of(text, () -> read(text));
    }
}
