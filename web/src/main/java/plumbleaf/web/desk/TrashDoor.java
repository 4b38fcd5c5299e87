package plumbleaf.web.desk;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Moment;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Table;
import plumbleaf.web.people.Audit;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobLine;
import plumbleaf.web.store.JobStore;

/** The trash: a job in it keeps everything and comes back as it was, until an owner removes it for good. */
@Controller
class TrashDoor {
    private final Database database;
    private final JobStore store;
    private final Audit audit;
    private final Pages pages;
    private final WhoIsThere who;

    TrashDoor(Database database, JobStore store, Audit audit, Pages pages, WhoIsThere who) {
        this.database = database;
        this.store = store;
        this.audit = audit;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/trash")
    ResponseEntity<String> trash(HttpServletRequest request) {
        List<Table.Line> jobs = store.trash().stream()
                .map(line -> new Table.Line(line.id().text(), List.of(line.title(), Moment.of(line.changedAt()))))
                .toList();
        return pages.html(HttpStatus.OK, "trash.jte", Map.of("frame", pages.frame(request, "Trash"), "jobs", jobs));
    }

    @PostMapping("/jobs/{id}/throw-away")
    ResponseEntity<String> throwAway(HttpServletRequest request, @PathVariable String id) {
        store.throwAway(known(id), me(request));
        return to("/trash");
    }

    @PostMapping("/trash/{id}/take-back")
    ResponseEntity<String> takeBack(HttpServletRequest request, @PathVariable String id) {
        JobId job = known(id);
        store.takeBack(job, me(request));
        return to("/jobs/" + job);
    }

    /** For good, by an owner alone. */
    @PostMapping("/trash/{id}/remove")
    ResponseEntity<String> remove(
            HttpServletRequest request, @PathVariable String id, @RequestParam(defaultValue = "") String sure) {
        JobId job = known(id);
        List<JobLine> one =
                store.trash().stream().filter(line -> line.id().equals(job)).toList();
        if (one.isEmpty()) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return removed(request, one, sure);
    }

    @PostMapping("/trash/empty")
    ResponseEntity<String> empty(HttpServletRequest request, @RequestParam(defaultValue = "") String sure) {
        return removed(request, store.trash(), sure);
    }

    private ResponseEntity<String> removed(HttpServletRequest request, List<JobLine> jobs, String sure) {
        if (!sure.equals("yes"))
            throw new ResponseStatusException(HttpStatus.UNPROCESSABLE_CONTENT, "Tick that you are sure");
        String me = me(request);
        for (JobLine line : jobs)
            database.doTogether(() -> {
                if (store.removeForGood(line.id())) audit.note(me, "removed a job for good", line.title());
            });
        return to("/trash");
    }

    private String me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal()).name();
    }

    private static JobId known(String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return new JobId(id);
    }

    private static ResponseEntity<String> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(address))
                .build();
    }
}
