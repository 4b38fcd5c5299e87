package plumbleaf.web.link;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.documents.PaperFile;
import plumbleaf.web.page.Moment;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.Secret;
import plumbleaf.web.room.JobAnswers;
import plumbleaf.web.room.Sight;
import plumbleaf.web.room.Ticked;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The customer's side of a link. Whatever is wrong with a link, the answer is the same: there is nothing here. */
@Controller
@RequestMapping("/c/{secret}")
class CustomerDoor {
    private static final int LONGEST_NAME = 100;
    private static final String PROPOSAL = "proposal.pdf";

    private final JobStore store;
    private final CustomerLinks links;
    private final JobAnswers answers;
    private final Pages pages;
    private final Clock clock;

    CustomerDoor(JobStore store, CustomerLinks links, JobAnswers answers, Pages pages, Clock clock) {
        this.store = store;
        this.links = links;
        this.answers = answers;
        this.pages = pages;
        this.clock = clock;
    }

    @GetMapping
    ResponseEntity<String> look(
            HttpServletRequest request,
            @PathVariable String secret,
            @RequestParam(name = "tick", required = false) List<String> ticks) {
        return shown(request, HttpStatus.OK, secret, ticks, "", "");
    }

    @GetMapping("/papers/{name}")
    ResponseEntity<byte[]> paper(@PathVariable String secret, @PathVariable String name) {
        PaperFile paper = paper(link(secret), name);
        return unlisted(ResponseEntity.ok())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .contentType(MediaType.APPLICATION_PDF)
                .body(paper.bytes());
    }

    @GetMapping("/papers/{name}/pages/{number}")
    ResponseEntity<byte[]> page(@PathVariable String secret, @PathVariable String name, @PathVariable int number) {
        byte[] picture = answers.page(paper(link(secret), name), number).orElseThrow(CustomerDoor::nothing);
        return unlisted(ResponseEntity.ok()).contentType(MediaType.IMAGE_PNG).body(picture);
    }

    @PostMapping("/accept")
    ResponseEntity<String> accept(
            HttpServletRequest request,
            @PathVariable String secret,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String date,
            @RequestParam(name = "tick", required = false) List<String> ticks) {
        CustomerLinks.Line link = link(secret);
        Optional<LocalDate> day = day(date);
        if (name.isBlank() || name.length() > LONGEST_NAME || day.isEmpty())
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    secret,
                    ticks,
                    name,
                    day.isEmpty() ? "Write today's date." : "Write your full name.");
        Ticked ticked = ticked(link, ticks);
        if (!ticked.reason().isEmpty())
            return shown(
                    request, HttpStatus.UNPROCESSABLE_CONTENT, secret, ticks, name, "Tick what can be built together.");
        if (!link.isAccepted()) links.accept(new Secret(secret), name, day.get(), ticked.words());
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/c/" + secret))
                .build();
    }

    private ResponseEntity<String> shown(
            HttpServletRequest request,
            HttpStatus status,
            String secret,
            @Nullable List<String> ticks,
            String typed,
            String problem) {
        CustomerLinks.Line link = link(secret);
        Map<String, Object> model = new LinkedHashMap<>();
        StoredJob job = job(link);
        List<CustomerPaper> papers = new ArrayList<>();
        for (String name : link.papers())
            answers.paper(job, name, Sight.EVERYTHING)
                    .ifPresent(paper -> papers.add(new CustomerPaper(name, PaperWords.of(name), answers.pages(paper))));
        model.put("frame", pages.frame(request, job.title()));
        model.put("at", "/c/" + secret);
        model.put("title", job.title());
        model.put("papers", papers);
        model.put("ticked", ticked(link, ticks));
        model.put("until", Moment.of(link.expiresAt()));
        model.put("accepted", accepted(link));
        model.put("today", LocalDate.now(clock.withZone(ZoneOffset.UTC)).toString());
        model.put("typed", typed);
        model.put("problem", problem);
        ResponseEntity<String> page = pages.html(status, "accept.jte", model);
        return ResponseEntity.status(status)
                .headers(page.getHeaders())
                .header("Referrer-Policy", "no-referrer")
                .header("X-Robots-Tag", "noindex")
                .body(page.getBody());
    }

    private static String accepted(CustomerLinks.Line link) {
        if (!link.isAccepted()) return "";
        return link.acceptedBy() + " accepted this on " + link.saidOn()
                + (link.ticked().isEmpty() ? "." : ", " + link.ticked() + ".");
    }

    /** Only where the proposal is shown, since that is where prices are. */
    private Ticked ticked(CustomerLinks.Line link, @Nullable List<String> ticks) {
        return link.papers().contains(PROPOSAL)
                ? answers.ticked(job(link), ticks == null ? List.of() : ticks)
                : new Ticked(List.of(), List.of(), "", "");
    }

    private Optional<LocalDate> day(String text) {
        try {
            LocalDate said = LocalDate.parse(text);
            LocalDate now = LocalDate.now(clock.withZone(ZoneOffset.UTC));
            // A day either way: the customer's calendar may be ahead or behind.
            boolean near = !said.isBefore(now.minusDays(1)) && !said.isAfter(now.plusDays(1));
            return near ? Optional.of(said) : Optional.empty();
        } catch (DateTimeParseException notADate) {
            return Optional.empty();
        }
    }

    private CustomerLinks.Line link(String secret) {
        return links.open(new Secret(secret)).orElseThrow(CustomerDoor::nothing);
    }

    private StoredJob job(CustomerLinks.Line link) {
        StoredJob now = store.open(link.job()).orElseThrow(CustomerDoor::nothing);
        String then = store.document(link.job(), link.revision()).orElseThrow(CustomerDoor::nothing);
        return new StoredJob(now.id(), now.title(), now.version(), link.revision(), then, false, false);
    }

    private PaperFile paper(CustomerLinks.Line link, String name) {
        if (!link.papers().contains(name)) throw nothing();
        return answers.paper(job(link), name, Sight.EVERYTHING).orElseThrow(CustomerDoor::nothing);
    }

    private static ResponseEntity.BodyBuilder unlisted(ResponseEntity.BodyBuilder answer) {
        return answer.cacheControl(CacheControl.noStore()).header("X-Robots-Tag", "noindex");
    }

    private static ResponseStatusException nothing() {
        return new ResponseStatusException(HttpStatus.NOT_FOUND);
    }
}
