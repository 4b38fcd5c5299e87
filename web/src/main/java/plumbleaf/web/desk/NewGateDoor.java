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
import plumbleaf.web.room.HandSketch;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The short walk to a new gate. */
@Controller
class NewGateDoor {
    private final JobStore store;
    private final Rooms rooms;
    private final Pages pages;
    private final WhoIsThere who;

    NewGateDoor(JobStore store, Rooms rooms, Pages pages, WhoIsThere who) {
        this.store = store;
        this.rooms = rooms;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/new")
    ResponseEntity<String> walk(HttpServletRequest request) {
        return shown(request, HttpStatus.OK, new NewGate(Map.of()), List.of());
    }

    @PostMapping("/new")
    ResponseEntity<String> make(HttpServletRequest request, @RequestParam Map<String, String> typed) {
        NewGate gate = new NewGate(typed);
        String document = gate.document();
        List<InputError> errors = rooms.errors("the new gate", document.getBytes(StandardCharsets.UTF_8));
        if (!errors.isEmpty()) return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, gate, errors);
        String me = who.person(request.getUserPrincipal()).name();
        StoredJob job = store.create(Rooms.titleOf(document), document, me);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs/" + job.id() + ("walk".equals(typed.get("then")) ? "/walk/1" : "/gates")))
                .build();
    }

    private ResponseEntity<String> shown(
            HttpServletRequest request, HttpStatus status, NewGate gate, List<InputError> errors) {
        List<HandPicture> hands = List.of(
                HandPicture.of("left-in", HandSketch.of(true, true), gate.hand()),
                HandPicture.of("right-in", HandSketch.of(false, true), gate.hand()),
                HandPicture.of("left-out", HandSketch.of(true, false), gate.hand()),
                HandPicture.of("right-out", HandSketch.of(false, false), gate.hand()));
        return pages.html(
                status,
                "newGate.jte",
                Map.of("frame", pages.frame(request, "New gate"), "hands", hands, "fields", gate.fields(errors)));
    }
}
