package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Pages;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** What several options of a job come to when they are ticked together: really designed, or refused with the reason. */
@Controller
class TogetherDoor {
    private final JobStore store;
    private final JobAnswers answers;
    private final Pages pages;

    TogetherDoor(JobStore store, JobAnswers answers, Pages pages) {
        this.store = store;
        this.answers = answers;
        this.pages = pages;
    }

    @GetMapping("/jobs/{id}/together")
    ResponseEntity<String> together(
            HttpServletRequest request,
            @PathVariable String id,
            @RequestParam(name = "tick", required = false) List<String> ticks) {
        StoredJob job = store.open(new JobId(id)).orElseThrow(TogetherDoor::nothing);
        Ticked ticked = answers.ticked(job, ticks == null ? List.of() : ticks);
        return pages.html(
                HttpStatus.OK,
                "together.jte",
                Map.of(
                        "frame",
                        pages.frame(request, job.title()),
                        "job",
                        id,
                        "title",
                        job.title(),
                        "at",
                        "/jobs/" + id + "/together",
                        "ticked",
                        ticked));
    }

    private static ResponseStatusException nothing() {
        return new ResponseStatusException(HttpStatus.NOT_FOUND);
    }
}
