package plumbleaf.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.browser.PageDrawings.Shown;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.packet.CrewSheet;
import plumbleaf.documents.typeset.HtmlPaper;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Laid;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.result.FindingJson;
import plumbleaf.jobfile.result.ResultFile;

/** A job's text made a design, with what the house has. Keeps the last one: a page asks for several things of it. */
final class PageBench {
    private final HouseKit kit;
    private final Redesigner redesigner;
    private Optional<Read> lastRead = Optional.empty();
    private Optional<Kept> last = Optional.empty();

    PageBench(HouseKit kit) {
        this.kit = kit;
        this.redesigner = new Redesigner(kit.catalogue(), StandardTables.load().standards(), new ProvenCutPlanner());
    }

    private record Read(String text, JobReading reading) {}

    private record Kept(String text, JobReading reading, Optional<Design> design, boolean priced) {
        boolean holds(String asked, boolean withPrices) {
            return text.equals(asked) && (priced || !withPrices);
        }
    }

    /** The whole result. */
    String design(String text) {
        return result(open(text, true));
    }

    /** The same sooner, without what each remedy would do to the price. */
    String unpriced(String text) {
        return result(open(text, false));
    }

    private static String result(Kept kept) {
        return kept.design().map(ResultFile::write).orElseGet(() -> errors(kept.reading()));
    }

    private static String errors(JobReading reading) {
        return JsonWriter.write(Json.object()
                .put("errors", Json.list(reading.errors(), error -> error.json()))
                .build());
    }

    String drawings(String text, List<String> parts, Shown shown) {
        List<Node> drawings = open(text, false)
                .design()
                .map(design -> PageDrawings.of(design, parts, shown))
                .orElse(List.of());
        return JsonWriter.compact(Json.list(drawings, drawing -> drawing));
    }

    /** The job laid out and drawn within the design before, whose loads and words are not those of this job yet. */
    String laid(String text, List<String> parts, Shown shown) {
        JobReading reading = read(text);
        return reading.match(
                good -> before().map(before -> laid(before, redesigner.laid(before, good.is()), parts, shown))
                        .orElse("{}"),
                bad -> errors(reading));
    }

    private static String laid(Design before, Laid laid, List<String> parts, Shown shown) {
        List<String> wrong = laid.layout().findings().stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX)
                .map(Finding::message)
                .toList();
        return JsonWriter.compact(Json.object()
                .put("findings", Json.texts(wrong))
                .put("ofGround", Json.list(ofGround(laid), FindingJson::finding))
                .put("ground", ground(laid.ground(), laid.layout()))
                .put("drawings", Json.list(PageDrawings.of(laid.drawnWith(before), parts, shown), drawing -> drawing))
                .build());
    }

    /** What is to be said of the measuring itself, how far off it closes among it: none of it waits for a load. */
    private static List<Finding> ofGround(Laid laid) {
        List<Finding> findings = new ArrayList<>(laid.ground().findings());
        laid.layout().findings().stream()
                .filter(finding -> finding.id().equals("line.closure"))
                .forEach(findings::add);
        return findings;
    }

    /** Each run's ground as it was measured: what the sketch in the yard is drawn from. */
    String ground(String text) {
        return JsonWriter.compact(open(text, false)
                .design()
                .map(design -> ground(design.ground(), design.layout()))
                .orElseGet(() ->
                        Json.list(List.<RunLayout>of(), run -> Json.object().build())));
    }

    private static Node ground(Ground ground, Layout layout) {
        return Json.list(
                layout.runs(),
                run -> Json.object()
                        .put("run", run.run())
                        .put("lengthIn", run.line().line().length().inches())
                        .put("points", Json.list(ground.profile(run.run()).points(), PageBench::point))
                        .build());
    }

    private static Node point(ProfilePoint point) {
        return Json.object()
                .put("shot", point.shot())
                .put("stationIn", point.station().inches())
                .put("elevationIn", point.elevation().inches())
                .build();
    }

    /** Without prices: there are none on it. */
    String crewSheet(String text) {
        return open(text, false)
                .design()
                .map(design ->
                        HtmlPaper.of(CrewSheet.of(PacketSubjects.of(design.job(), design, PaperOptions.usual()))))
                .orElse("");
    }

    private Optional<Design> before() {
        return last.flatMap(Kept::design);
    }

    private Kept open(String text, boolean withPrices) {
        if (last.isPresent() && last.get().holds(text, withPrices)) return last.get();
        JobReading reading = read(text);
        Optional<Design> design = reading.match(
                good -> Optional.of(designed(good.is(), withPrices).with(good.gaps())), bad -> Optional.empty());
        Kept kept = new Kept(text, reading, design, withPrices);
        last = Optional.of(kept);
        return kept;
    }

    private Design designed(Job job, boolean withPrices) {
        return withPrices ? redesigner.of(job, book(job)) : redesigner.unpriced(job, book(job));
    }

    /** A text is read once for all that is asked of it. */
    private JobReading read(String text) {
        if (lastRead.filter(is -> is.text().equals(text)).isEmpty())
            lastRead = Optional.of(new Read(text, JobFile.read("the job", text, kit.catalogue())));
        return lastRead.orElseThrow().reading();
    }

    private PriceBook book(Job job) {
        String name = job.money().priceBook();
        PriceBook today = kit.book().filter(own -> own.id().equals(name)).orElseGet(() -> PriceBook.none(name));
        return PriceBooks.kept(job, kit.yard().map(today::with).orElse(today));
    }
}
