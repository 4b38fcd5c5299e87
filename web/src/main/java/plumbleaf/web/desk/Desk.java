package plumbleaf.web.desk;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import plumbleaf.web.page.Pages;
import plumbleaf.web.store.JobStore;

/** The desk: every job, latest change first. */
@Controller
class Desk {
    private final JobStore store;
    private final Pages pages;

    Desk(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @GetMapping("/")
    ResponseEntity<String> desk(HttpServletRequest request) {
        List<DeskLine> jobs = store.list().stream().map(DeskLine::of).toList();
        return pages.html(HttpStatus.OK, "desk.jte", Map.of("frame", pages.frame(request, "Desk"), "jobs", jobs));
    }
}
