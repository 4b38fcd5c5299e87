package plumbleaf.web.link;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.PaperKind;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Moment;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Table;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.room.JobAnswers;
import plumbleaf.web.room.Sight;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** Where whoever sells makes links for the customer, sees which were accepted, and takes them back. */
@Controller
@RequestMapping("/jobs/{id}/customer")
class LinksDoor {
    private static final Set<String> USUAL = Set.of("proposal.pdf", "site-plan.pdf", "care-card.pdf");

    private final JobStore store;
    private final CustomerLinks links;
    private final JobAnswers answers;
    private final Pages pages;
    private final WhoIsThere who;
    private final Clock clock;

    LinksDoor(JobStore store, CustomerLinks links, JobAnswers answers, Pages pages, WhoIsThere who, Clock clock) {
        this.store = store;
        this.links = links;
        this.answers = answers;
        this.pages = pages;
        this.who = who;
        this.clock = clock;
    }

    @GetMapping
    ResponseEntity<String> list(HttpServletRequest request, @PathVariable String id) {
        return shown(request, HttpStatus.OK, job(id), "", "");
    }

    /** The link itself is in this one answer and nowhere else. */
    @PostMapping
    ResponseEntity<String> make(
            HttpServletRequest request,
            @PathVariable String id,
            @RequestParam(defaultValue = "") List<String> paper,
            @RequestParam(defaultValue = "14") int days) {
        StoredJob job = job(id);
        List<String> chosen = offered(job).stream().filter(paper::contains).toList();
        if (chosen.isEmpty())
            return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, job, "", "Pick at least one paper.");
        String secret = links.make(
                        job,
                        chosen,
                        days,
                        who.person(request.getUserPrincipal()).name())
                .text();
        String address = ServletUriComponentsBuilder.fromRequestUri(request)
                .replacePath("/c/" + secret)
                .replaceQuery(null)
                .toUriString();
        return shown(request, HttpStatus.OK, job, address, "");
    }

    @PostMapping("/{link}/revoke")
    ResponseEntity<String> revoke(HttpServletRequest request, @PathVariable String id, @PathVariable String link) {
        links.revoke(job(id).id(), link, who.person(request.getUserPrincipal()).name());
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs/" + id + "/customer"))
                .build();
    }

    private List<String> offered(StoredJob job) {
        return answers.papers(job, Sight.EVERYTHING).stream()
                .map(PaperFile::name)
                .filter(name -> name.endsWith(".pdf")
                        && PaperKind.of(name).map(PaperKind::isForCustomer).orElse(false))
                .toList();
    }

    private ResponseEntity<String> shown(
            HttpServletRequest request, HttpStatus status, StoredJob job, String made, String problem) {
        List<Choice> papers = offered(job).stream()
                .map(name -> new Choice(name, PaperWords.of(name)))
                .toList();
        return pages.html(
                status,
                "customer.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Customer \u00b7 " + job.title()),
                        "job",
                        job.id().text(),
                        "title",
                        job.title(),
                        "papers",
                        papers,
                        "mustFix",
                        answers.mustFix(job),
                        "usual",
                        USUAL,
                        "links",
                        links.of(job.id()).stream().map(this::line).toList(),
                        "made",
                        made,
                        "problem",
                        problem));
    }

    /** {@code of} holds the link's id while it can still be taken back. */
    private Table.Line line(CustomerLinks.Line link) {
        boolean good = !link.revoked() && link.expiresAt().isAfter(clock.instant());
        String state = link.isAccepted()
                ? "accepted by " + link.acceptedBy() + ", " + link.saidOn()
                        + (link.ticked().isEmpty() ? "" : ", " + link.ticked())
                : link.revoked() ? "taken back" : good ? "open" : "run out";
        return new Table.Line(
                good ? link.id() : "",
                List.of(
                        state,
                        String.join(
                                ", ", link.papers().stream().map(PaperWords::of).toList()),
                        "revision " + link.revision(),
                        link.who() + ", " + Moment.of(link.madeAt()),
                        Moment.of(link.expiresAt())));
    }

    private StoredJob job(String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return store.open(new JobId(id)).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }
}
