package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobLine;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** How the house makes its gates and fences: listed, renamed, removed, and made again at a gate or a run of any job. */
@Controller
@RequestMapping("/builds")
class BuildsDoor {
    /** Jobs whose gates and runs are offered, latest first; the others offer the builds themselves, in Gates and Line. */
    private static final int JOBS_OFFERED = 30;

    private final OwnBuilds builds;
    private final BuildWords words;
    private final Rooms rooms;
    private final JobStore store;
    private final Pages pages;
    private final WhoIsThere who;

    BuildsDoor(OwnBuilds builds, Bench bench, Rooms rooms, JobStore store, Pages pages, WhoIsThere who) {
        this.builds = builds;
        this.words = new BuildWords(bench.catalogue());
        this.rooms = rooms;
        this.store = store;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping
    ResponseEntity<String> builds(HttpServletRequest request) {
        return shown(request, HttpStatus.OK, "");
    }

    @PostMapping("/rename")
    ResponseEntity<String> rename(
            HttpServletRequest request, @RequestParam String kind, @RequestParam String name, @RequestParam String to) {
        String wanted = to.strip();
        if (wanted.equals(name)) return back();
        if (wanted.isEmpty() || wanted.length() > BuildForm.LONGEST_NAME)
            return refused(request, name + ": a build needs a name of up to " + BuildForm.LONGEST_NAME + " letters.");
        return switch (builds.rename(kind, name, wanted)) {
            case DONE -> back();
            case TAKEN -> refused(request, name + ": there is a build named " + wanted + " already.");
            case GONE -> refused(request, "There is no build named " + name + " any more.");
        };
    }

    @PostMapping("/remove")
    ResponseEntity<String> remove(
            @RequestParam String kind, @RequestParam String name, @RequestParam(defaultValue = "") String sure) {
        if (!sure.equals("yes"))
            throw new ResponseStatusException(HttpStatus.UNPROCESSABLE_CONTENT, "Tick that you are sure");
        builds.forget(kind, name);
        return back();
    }

    /** @param place {@code JOB ID} of a gate or a run */
    @PostMapping("/use")
    ResponseEntity<String> use(
            HttpServletRequest request,
            @RequestParam String kind,
            @RequestParam String name,
            @RequestParam(defaultValue = "") String place) {
        int gap = place.indexOf(' ');
        if (gap < 0) return refused(request, name + ": say which " + kind + " is to be made so.");
        StoredJob job = opened(place.substring(0, gap));
        String thing = place.substring(gap + 1);
        if (!thing.matches("[A-Za-z0-9._-]{1,20}"))
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "Not a place in a job");
        String me = who.person(request.getUserPrincipal()).name();
        return new BuildForm("use", thing)
                .done(builds, rooms, job, name, me)
                .match(
                        fine -> store.edit(job.id(), job.version(), fine.title(), fine.text(), fine.what(), me)
                                .match(
                                        saved -> to("/jobs/" + job.id() + (kind.equals("gate") ? "/gates" : "/line")),
                                        stale -> refused(
                                                request,
                                                stale.who() + " changed "
                                                        + stale.now().title() + " meanwhile: " + stale.what()
                                                        + ". Press once more.")),
                        problem -> refused(request, job.title() + ": " + problem.problem()));
    }

    private ResponseEntity<String> refused(HttpServletRequest request, String problem) {
        return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, problem);
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, String problem) {
        List<BuildLine> gates = builds.lines("gate", words);
        List<BuildLine> runs = builds.lines("run", words);
        List<BuildLine.Places> gatePlaces = new ArrayList<>();
        List<BuildLine.Places> runPlaces = new ArrayList<>();
        // Where no build is kept there is nothing to make again, and no job is opened to ask where.
        if (!gates.isEmpty() || !runs.isEmpty())
            for (StoredJob job : latest()) {
                DocumentText document = DocumentText.of(job.document());
                if (!gates.isEmpty()) gatePlaces.addAll(places(job, document, "gates", "gate "));
                if (!runs.isEmpty()) runPlaces.addAll(places(job, document, "runs", "run "));
            }
        return pages.html(
                status,
                "builds.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Builds"),
                        "gates",
                        gates,
                        "runs",
                        runs,
                        "gatePlaces",
                        gatePlaces,
                        "runPlaces",
                        runPlaces,
                        "problem",
                        problem));
    }

    private List<StoredJob> latest() {
        return store.list().stream()
                .limit(JOBS_OFFERED)
                .map(JobLine::id)
                .map(store::open)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The gates or runs of one job; nothing where it has none. */
    private static List<BuildLine.Places> places(StoredJob job, DocumentText document, String list, String word) {
        List<Choice> things = Choices.ids(document, list).stream()
                .map(id -> new Choice(job.id() + " " + id.value(), word + id.value() + " of " + job.title()))
                .toList();
        return things.isEmpty() ? List.of() : List.of(new BuildLine.Places(job.title(), things));
    }

    private StoredJob opened(String id) {
        return Optional.of(id)
                .filter(JobId::isOne)
                .flatMap(known -> store.open(new JobId(known)))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private static ResponseEntity<String> back() {
        return to("/builds");
    }

    private static ResponseEntity<String> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(address))
                .build();
    }
}
