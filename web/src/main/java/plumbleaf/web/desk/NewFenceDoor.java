package plumbleaf.web.desk;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The start of the walk along a new fence. */
@Controller
class NewFenceDoor {
    private final JobStore store;
    private final Rooms rooms;
    private final Pages pages;
    private final WhoIsThere who;

    NewFenceDoor(JobStore store, Rooms rooms, Pages pages, WhoIsThere who) {
        this.store = store;
        this.rooms = rooms;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/new/fence")
    ResponseEntity<String> begin(HttpServletRequest request) {
        return shown(request, HttpStatus.OK, new NewFence(Map.of(), rooms.styles()), List.of());
    }

    @PostMapping("/new/fence")
    ResponseEntity<String> make(HttpServletRequest request, @RequestParam Map<String, String> typed) {
        NewFence fence = new NewFence(typed, rooms.styles());
        String document = fence.document();
        List<InputError> errors = rooms.errors("the new fence", document.getBytes(StandardCharsets.UTF_8));
        if (!errors.isEmpty()) return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, fence, errors);
        String me = who.person(request.getUserPrincipal()).name();
        StoredJob job = store.create(Rooms.titleOf(document), document, me);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs/" + job.id() + "/walk/1"))
                .build();
    }

    private ResponseEntity<String> shown(
            HttpServletRequest request, HttpStatus status, NewFence fence, List<InputError> errors) {
        return pages.html(
                status,
                "newFence.jte",
                Map.of("frame", pages.frame(request, "New fence"), "fields", fence.fields(errors)));
    }
}
