package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Table;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Step;
import plumbleaf.web.store.StoredJob;

/** Who did what to a job, and when; undo and redo are part of it. */
@Controller
class HistoryDoor {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("MMM d, yyyy HH:mm:ss 'UTC'", Locale.US).withZone(ZoneOffset.UTC);

    private final JobStore store;
    private final Pages pages;
    private final WhoIsThere who;

    HistoryDoor(JobStore store, Pages pages, WhoIsThere who) {
        this.who = who;
        this.store = store;
        this.pages = pages;
    }

    @GetMapping("/jobs/{id}/history")
    ResponseEntity<String> history(HttpServletRequest request, @PathVariable String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        StoredJob job = store.open(new JobId(id)).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        Sight sight = Sight.of(who.person(request.getUserPrincipal()).role());
        List<Table.Line> lines =
                store.history(job.id()).stream().map(step -> line(step, sight)).toList();
        Table steps = new Table("Latest first", List.of("Change", "", "By", "When"), lines);
        return pages.html(
                HttpStatus.OK,
                "history.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "History \u00b7 " + job.title()),
                        "job",
                        id,
                        "title",
                        job.title(),
                        "steps",
                        steps));
    }

    private static Table.Line line(Step step, Sight sight) {
        String what = sight == Sight.EVERYTHING ? step.what() : Veil.step(step.what());
        return new Table.Line(
                Long.toString(step.revision()), List.of(what, step.kind(), step.who(), TIME.format(step.at())));
    }
}
