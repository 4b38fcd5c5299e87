package plumbleaf.web.room;

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
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Room;
import plumbleaf.web.page.RoomView;
import plumbleaf.web.page.Unit;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Saving;
import plumbleaf.web.store.StoredJob;

/**
 * Opens rooms and takes edits. A script asks for the inside of a room alone (header {@code X-Live}); without a script a form's answer is
 * the whole page.
 */
@Controller
@RequestMapping("/jobs/{id}")
class RoomDoor {
    private final JobStore store;
    private final Rooms rooms;
    private final Pages pages;
    private final WhoIsThere who;

    RoomDoor(JobStore store, Rooms rooms, Pages pages, WhoIsThere who) {
        this.store = store;
        this.rooms = rooms;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping
    ResponseEntity<String> job(@PathVariable String id) {
        return to(open(id), Room.GATES);
    }

    @GetMapping("/{room}")
    ResponseEntity<String> room(HttpServletRequest request, @PathVariable String id, @PathVariable String room) {
        StoredJob job = open(id);
        return shown(request, HttpStatus.OK, rooms.view(roomOf(room), job, Typed.NOTHING, sight(request)));
    }

    /** One value: typed, picked or dragged. Empty takes it out of the job. */
    @PostMapping("/{room}/edit")
    ResponseEntity<String> edit(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version,
            @RequestParam String path,
            @RequestParam(defaultValue = "WORDS") String unit,
            @RequestParam String value) {
        Unit shown = Unit.of(unit).orElse(Unit.WORDS);
        return change(request, id, roomOf(room), version, List.of(new Edit(path, shown, value)));
    }

    /** What one value would come to, asked while something is dragged: nothing is kept. */
    @PostMapping("/{room}/try")
    ResponseEntity<String> tryOut(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version,
            @RequestParam String path,
            @RequestParam String value) {
        StoredJob job = open(id);
        if (job.version() != version)
            return ResponseEntity.status(HttpStatus.CONFLICT).build();
        return rooms.apply(job, new Edit(path, Unit.WORDS, value))
                .match(
                        fine -> shown(
                                request,
                                HttpStatus.OK,
                                rooms.view(roomOf(room), job.withDocument(fine.text()), Typed.NOTHING, sight(request))),
                        refused -> ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                                .build());
    }

    /** A remedy: the same kind of edit, written by the engine. */
    @PostMapping("/{room}/press")
    ResponseEntity<String> press(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version,
            @RequestParam String edit) {
        List<Edit> asked;
        try {
            asked = Edit.ofRemedy(edit);
        } catch (IllegalArgumentException noEdit) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "Not a remedy", noEdit);
        }
        return change(request, id, roomOf(room), version, asked);
    }

    /** One more item of a list: hours, a bill, an option. */
    @PostMapping("/{room}/write-down")
    ResponseEntity<String> writeDown(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam Map<String, String> typed) {
        Ledger ledger = Ledger.of(typed.getOrDefault("list", ""))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST, "No such list"));
        if (sight(request) != Sight.EVERYTHING && !ledger.isForHands())
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        StoredJob job = open(id);
        long version = versionOf(typed);
        if (job.version() != version) return answer(request, roomOf(room), store.stale(job.id()), "", Unit.WORDS, "");
        return rooms.written(job, ledger, typed)
                .match(
                        fine -> answer(
                                request,
                                roomOf(room),
                                store.edit(job.id(), version, fine.title(), fine.text(), fine.what(), me(request)),
                                "",
                                Unit.WORDS,
                                ""),
                        refused -> shown(
                                request,
                                HttpStatus.UNPROCESSABLE_CONTENT,
                                rooms.view(
                                        roomOf(room),
                                        job,
                                        new Typed(refused.path(), "", refused.problem(), typed),
                                        sight(request))));
    }

    private static long versionOf(Map<String, String> typed) {
        try {
            return Long.parseLong(typed.getOrDefault("version", ""));
        } catch (NumberFormatException noNumber) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "No version", noNumber);
        }
    }

    /** The prices as they are now, written into the job. */
    @PostMapping("/money/keep-prices")
    ResponseEntity<String> keepPrices(HttpServletRequest request, @PathVariable String id, @RequestParam long version) {
        return prices(request, id, version, true);
    }

    /** Back to the price book as it stands. */
    @PostMapping("/money/take-new-prices")
    ResponseEntity<String> takeNewPrices(
            HttpServletRequest request, @PathVariable String id, @RequestParam long version) {
        return prices(request, id, version, false);
    }

    private ResponseEntity<String> prices(HttpServletRequest request, String id, long version, boolean kept) {
        StoredJob job = open(id);
        if (job.version() != version) return answer(request, Room.MONEY, store.stale(job.id()), "", Unit.WORDS, "");
        return kept(request, job, Room.MONEY, version, new Edit("", Unit.WORDS, ""), rooms.withPrices(job, kept));
    }

    /** What every run costs fitted each way: nothing in the job changes. */
    @PostMapping("/line/price-fits")
    ResponseEntity<String> priceFits(HttpServletRequest request, @PathVariable String id) {
        StoredJob job = open(id);
        rooms.priceFits(job);
        return isLive(request)
                ? shown(request, HttpStatus.OK, rooms.view(Room.LINE, job, Typed.NOTHING, sight(request)))
                : to(job, Room.LINE);
    }

    /** A shot to be filled in. */
    @PostMapping("/{room}/add-shot")
    ResponseEntity<String> addShot(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version) {
        StoredJob job = open(id);
        Edited edited = rooms.withNewShot(job);
        return kept(request, job, roomOf(room), version, new Edit("", Unit.WORDS, ""), edited);
    }

    /** A pull test to be filled in. */
    @PostMapping("/{room}/add-pull")
    ResponseEntity<String> addPull(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version,
            @RequestParam String gate,
            @RequestParam String post) {
        StoredJob job = open(id);
        Edited edited = rooms.withNewPull(job, gate, post);
        return kept(request, job, roomOf(room), version, new Edit("", Unit.WORDS, ""), edited);
    }

    @PostMapping("/{room}/undo")
    ResponseEntity<String> undo(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version) {
        Saving saving = store.undo(open(id).id(), version, me(request));
        return answer(request, roomOf(room), saving, "", Unit.WORDS, "");
    }

    @PostMapping("/{room}/redo")
    ResponseEntity<String> redo(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version) {
        Saving saving = store.redo(open(id).id(), version, me(request));
        return answer(request, roomOf(room), saving, "", Unit.WORDS, "");
    }

    private ResponseEntity<String> change(
            HttpServletRequest request, String id, Room room, long version, List<Edit> edits) {
        StoredJob job = open(id);
        Edit edit = edits.get(0);
        if (job.version() != version) {
            Saving stale = store.stale(job.id());
            return answer(request, room, stale, edit.path(), edit.unit(), edit.value());
        }
        return kept(request, job, room, version, edit, rooms.apply(job, edits));
    }

    private ResponseEntity<String> kept(
            HttpServletRequest request, StoredJob job, Room room, long version, Edit edit, Edited edited) {
        return edited.match(
                fine -> answer(
                        request,
                        room,
                        store.edit(job.id(), version, fine.title(), fine.text(), fine.what(), me(request)),
                        edit.path(),
                        edit.unit(),
                        edit.value()),
                refused -> shown(
                        request,
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        rooms.view(
                                room,
                                job,
                                new Typed(refused.path(), edit.value(), refused.problem()),
                                sight(request))));
    }

    private ResponseEntity<String> answer(
            HttpServletRequest request, Room room, Saving saving, String path, Unit unit, String mine) {
        return saving.match(
                saved -> isLive(request)
                        ? shown(request, HttpStatus.OK, rooms.view(room, saved.now(), Typed.NOTHING, sight(request)))
                        : to(saved.now(), room),
                stale -> {
                    String theirs = stale.who() + ": " + stale.what();
                    String now = rooms.valueAt(stale.now(), path);
                    RoomView view = rooms.view(room, stale.now(), Typed.NOTHING, sight(request))
                            .withConflict(new RoomView.Conflict(path, unit.name(), theirs, now, mine));
                    return shown(request, HttpStatus.CONFLICT, view);
                });
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, RoomView view) {
        String title = view.room().word() + " \u00b7 " + view.job().title();
        Map<String, Object> values = Map.of("frame", pages.frame(request, title), "view", view);
        return pages.html(status, isLive(request) ? "inside.jte" : "room.jte", values);
    }

    private static boolean isLive(HttpServletRequest request) {
        return request.getHeader("X-Live") != null;
    }

    private StoredJob open(String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return store.open(new JobId(id)).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private static Room roomOf(String key) {
        return Room.of(key).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private Sight sight(HttpServletRequest request) {
        return Sight.of(who.person(request.getUserPrincipal()).role());
    }

    private String me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal()).name();
    }

    private static ResponseEntity<String> to(StoredJob job, Room room) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs/" + job.id() + "/" + room.key()))
                .build();
    }
}
