package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.RoomView;
import plumbleaf.web.page.Unit;
import plumbleaf.web.page.WalkView;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Saving;
import plumbleaf.web.store.StoredJob;

/** The walk about a site, one question a screen: the same edits as in the rooms, asked in the order one goes. */
@Controller
@RequestMapping("/jobs/{id}/walk")
class WalkDoor {
    private final JobStore store;
    private final Rooms rooms;
    private final RoomAnswers answers;
    private final Pages pages;

    WalkDoor(JobStore store, Rooms rooms, RoomAnswers answers, Pages pages) {
        this.store = store;
        this.rooms = rooms;
        this.answers = answers;
        this.pages = pages;
    }

    @GetMapping
    ResponseEntity<String> walk(@PathVariable String id) {
        return to(answers.open(id), 1);
    }

    @GetMapping("/{number}")
    ResponseEntity<String> step(HttpServletRequest request, @PathVariable String id, @PathVariable int number) {
        return shown(request, HttpStatus.OK, rooms.walk(answers.open(id), number, Typed.NOTHING));
    }

    @PostMapping("/{number}/edit")
    ResponseEntity<String> edit(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable int number,
            @RequestParam long version,
            @RequestParam String path,
            @RequestParam(defaultValue = "WORDS") String unit,
            @RequestParam String value) {
        Edit edit = new Edit(path, Unit.of(unit).orElse(Unit.WORDS), value);
        StoredJob job = answers.open(id);
        if (job.version() != version)
            return answer(request, number, store.stale(job.id(), answers.maker(request)), edit);
        return rooms.apply(job, edit)
                .match(
                        fine -> answer(
                                request,
                                number,
                                store.edit(
                                        job.id(),
                                        version,
                                        fine.title(),
                                        fine.text(),
                                        fine.what(),
                                        answers.maker(request)),
                                edit),
                        refused -> shown(
                                request,
                                HttpStatus.UNPROCESSABLE_CONTENT,
                                rooms.walk(job, number, new Typed(refused.path(), value, refused.problem()))));
    }

    @PostMapping("/{number}/write-down")
    ResponseEntity<String> writeDown(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable int number,
            @RequestParam long version,
            @RequestParam Map<String, String> typed) {
        Ledger ledger = Ledger.of(typed.getOrDefault("list", ""))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST, "No such list"));
        StoredJob job = answers.open(id);
        Edit none = new Edit("", Unit.WORDS, "");
        if (job.version() != version)
            return answer(request, number, store.stale(job.id(), answers.maker(request)), none);
        return rooms.written(job, ledger, typed)
                .match(
                        fine -> answer(
                                request,
                                number,
                                store.edit(
                                        job.id(),
                                        version,
                                        fine.title(),
                                        fine.text(),
                                        fine.what(),
                                        answers.maker(request)),
                                none),
                        refused -> shown(
                                request,
                                HttpStatus.UNPROCESSABLE_CONTENT,
                                rooms.walk(job, number, new Typed(refused.path(), "", refused.problem(), typed))));
    }

    @PostMapping("/{number}/undo")
    ResponseEntity<String> undo(
            HttpServletRequest request, @PathVariable String id, @PathVariable int number, @RequestParam long version) {
        Saving saving = store.undo(answers.open(id).id(), version, answers.maker(request));
        return answer(request, number, saving, new Edit("", Unit.WORDS, ""));
    }

    private ResponseEntity<String> answer(HttpServletRequest request, int number, Saving saving, Edit edit) {
        return saving.match(
                saved -> isLive(request)
                        ? shown(request, HttpStatus.OK, rooms.walk(saved.now(), number, Typed.NOTHING))
                        : to(saved.now(), number),
                stale -> {
                    String theirs = stale.who() + ": " + stale.what();
                    String now = rooms.valueAt(stale.now(), edit.path());
                    WalkView view = rooms.walk(stale.now(), number, Typed.NOTHING)
                            .withConflict(new RoomView.Conflict(
                                    edit.path(), edit.unit().name(), theirs, now, edit.value()));
                    return shown(request, HttpStatus.CONFLICT, view);
                });
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, WalkView walk) {
        String title = walk.name() + " \u00b7 " + walk.view().job().title();
        Map<String, Object> values = Map.of("frame", pages.frame(request, title), "walk", walk);
        return pages.html(status, isLive(request) ? "walkInside.jte" : "walk.jte", values);
    }

    private static boolean isLive(HttpServletRequest request) {
        return request.getHeader("X-Live") != null;
    }

    private static ResponseEntity<String> to(StoredJob job, int number) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs/" + job.id() + "/walk/" + number))
                .build();
    }
}
