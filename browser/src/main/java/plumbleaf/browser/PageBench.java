package plumbleaf.browser;

import java.util.List;
import java.util.Optional;
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
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.SetPost;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.result.ResultFile;

/** A job's text made a design, with what the house has. Keeps the last one: a page asks for several things of it. */
final class PageBench {
    private final HouseKit kit;
    private final Redesigner redesigner;
    private Optional<Kept> last = Optional.empty();

    PageBench(HouseKit kit) {
        this.kit = kit;
        this.redesigner = new Redesigner(kit.catalogue(), StandardTables.load().standards(), new ProvenCutPlanner());
    }

    static PageBench ofTheProgram() {
        return new PageBench(HouseKit.ofTheProgram());
    }

    private record Kept(String text, JobReading reading, Optional<Design> design) {
        List<ProfilePoint> profile(String run) {
            return design.map(is -> is.ground().profile(run).points()).orElse(List.of());
        }
    }

    String design(String text) {
        Kept kept = open(text);
        return kept.design()
                .map(ResultFile::write)
                .orElseGet(() -> JsonWriter.write(Json.object()
                        .put("errors", Json.list(kept.reading().errors(), error -> error.json()))
                        .build()));
    }

    String drawings(String text) {
        List<Node> drawings = open(text).design().map(PageDrawings::of).orElse(List.of());
        return JsonWriter.write(Json.list(drawings, drawing -> drawing));
    }

    /** The layout with one post moved, and its run drawn with it. */
    String moved(String run, String post, String station, List<String> known) {
        Design before = last.flatMap(Kept::design).orElseThrow();
        Length to = LengthText.length(station).value().orElseThrow();
        Laid laid = redesigner.moved(before, run, new SetPost(post, to));
        List<String> wrong = laid.layout().findings().stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX)
                .map(Finding::message)
                .toList();
        return JsonWriter.write(Json.object()
                .put("findings", Json.texts(wrong))
                .put("strips", PageDrawings.strips(laid.drawnWith(before), run, known))
                .build());
    }

    /** Each run's ground as it was measured: what the sketch in the yard is drawn from. */
    String ground(String text) {
        List<RunLayout> runs =
                open(text).design().map(design -> design.layout().runs()).orElse(List.of());
        return JsonWriter.write(Json.list(
                runs,
                run -> Json.object()
                        .put("run", run.run())
                        .put("lengthIn", run.line().line().length().inches())
                        .put(
                                "points",
                                Json.list(
                                        open(text).profile(run.run()),
                                        point -> Json.object()
                                                .put("shot", point.shot())
                                                .put(
                                                        "stationIn",
                                                        point.station().inches())
                                                .put(
                                                        "elevationIn",
                                                        point.elevation().inches())
                                                .build()))
                        .build()));
    }

    String crewSheet(String text) {
        return open(text)
                .design()
                .map(design ->
                        HtmlPaper.of(CrewSheet.of(PacketSubjects.of(design.job(), design, PaperOptions.usual()))))
                .orElse("");
    }

    private Kept open(String text) {
        if (last.isPresent() && last.get().text().equals(text)) return last.get();
        JobReading reading = JobFile.read("the job", text, kit.catalogue());
        Optional<Design> design = reading.match(
                good -> Optional.of(redesigner.of(good.is(), book(good.is())).with(good.gaps())),
                bad -> Optional.empty());
        Kept kept = new Kept(text, reading, design);
        last = Optional.of(kept);
        return kept;
    }

    private PriceBook book(Job job) {
        String name = job.money().priceBook();
        PriceBook today = kit.book()
                .filter(own -> own.id().equals(name))
                .or(() -> PriceBooks.standard(name))
                .orElseGet(() -> PriceBook.none(name));
        return PriceBooks.kept(job, kit.yard().map(today::with).orElse(today));
    }
}
