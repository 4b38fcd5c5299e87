package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Room;
import plumbleaf.web.page.Unit;
import plumbleaf.web.room.RoomAnswers.Asked;
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
    private final RoomAnswers answers;
    private final OwnBuilds builds;

    RoomDoor(JobStore store, Rooms rooms, RoomAnswers answers, OwnBuilds builds) {
        this.store = store;
        this.rooms = rooms;
        this.answers = answers;
        this.builds = builds;
    }

    @GetMapping
    ResponseEntity<String> job(@PathVariable String id) {
        return RoomAnswers.to(answers.open(id), Room.GATES);
    }

    @GetMapping("/{room}")
    ResponseEntity<String> room(HttpServletRequest request, @PathVariable String id, @PathVariable String room) {
        StoredJob job = answers.open(id);
        return answers.shown(
                request,
                HttpStatus.OK,
                rooms.view(RoomAnswers.roomOf(room), job, Typed.NOTHING, answers.sight(request), Breadth.of(request)));
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
        return change(request, id, RoomAnswers.roomOf(room), version, List.of(new Edit(path, shown, value)));
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
        StoredJob job = answers.open(id);
        if (job.version() != version)
            return ResponseEntity.status(HttpStatus.CONFLICT).build();
        // A packet of fifty pages is not set anew at every place a paper is drawn past.
        if (PacketOrder.isAt(path)) return ResponseEntity.noContent().build();
        return rooms.apply(job, new Edit(path, Unit.WORDS, value))
                .match(
                        fine -> answers.shown(
                                request,
                                HttpStatus.OK,
                                rooms.view(
                                        RoomAnswers.roomOf(room),
                                        job.withDocument(fine.text()),
                                        Typed.NOTHING,
                                        answers.sight(request),
                                        Breadth.of(request))),
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
        return change(request, id, RoomAnswers.roomOf(room), version, asked);
    }

    /** One more item of a list: hours, a bill, an option; or a build of the house kept, used, forgotten. */
    @PostMapping("/{room}/write-down")
    ResponseEntity<String> writeDown(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam Map<String, String> typed) {
        String list = typed.getOrDefault("list", "");
        Optional<BuildForm> build = BuildForm.of(list);
        if (build.isPresent()) return build(request, answers.open(id), RoomAnswers.roomOf(room), build.get(), typed);
        Ledger ledger =
                Ledger.of(list).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST, "No such list"));
        if (answers.sight(request) != Sight.EVERYTHING && !ledger.isForHands())
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        StoredJob job = answers.open(id);
        Asked asked = Asked.whole(versionOf(typed));
        if (job.version() != asked.version()) return answers.stale(request, job, RoomAnswers.roomOf(room), asked);
        return rooms.written(job, ledger, typed)
                .match(
                        fine -> answers.saved(
                                request,
                                RoomAnswers.roomOf(room),
                                store.edit(
                                        job.id(),
                                        asked.version(),
                                        fine.title(),
                                        fine.text(),
                                        fine.what(),
                                        answers.maker(request)),
                                asked),
                        refused -> answers.refused(
                                request,
                                job,
                                RoomAnswers.roomOf(room),
                                new Typed(refused.path(), "", refused.problem(), typed)));
    }

    private ResponseEntity<String> build(
            HttpServletRequest request, StoredJob job, Room room, BuildForm form, Map<String, String> typed) {
        if (answers.sight(request) != Sight.EVERYTHING) throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        Asked asked = Asked.whole(versionOf(typed));
        if (job.version() != asked.version()) return answers.stale(request, job, room, asked);
        String name = typed.getOrDefault("name", "").strip();
        return form.done(builds, rooms, job, name, answers.me(request))
                .match(
                        fine -> fine.text().equals(job.document())
                                ? answers.now(request, job, room)
                                : answers.kept(request, job, room, asked, fine),
                        refused -> answers.refused(
                                request, job, room, new Typed(form.list(), "", refused.problem(), typed)));
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
        return whole(request, id, Room.MONEY, version, job -> rooms.withPrices(job, true));
    }

    /** Back to the price book as it stands. */
    @PostMapping("/money/take-new-prices")
    ResponseEntity<String> takeNewPrices(
            HttpServletRequest request, @PathVariable String id, @RequestParam long version) {
        return whole(request, id, Room.MONEY, version, job -> rooms.withPrices(job, false));
    }

    /** What every run costs fitted each way: nothing in the job changes. */
    @PostMapping("/line/price-fits")
    ResponseEntity<String> priceFits(HttpServletRequest request, @PathVariable String id) {
        StoredJob job = answers.open(id);
        rooms.priceFits(job);
        return answers.now(request, job, Room.LINE);
    }

    /** A shot to be filled in. */
    @PostMapping("/{room}/add-shot")
    ResponseEntity<String> addShot(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version) {
        return whole(request, id, RoomAnswers.roomOf(room), version, rooms::withNewShot);
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
        return whole(request, id, RoomAnswers.roomOf(room), version, job -> rooms.withNewPull(job, gate, post));
    }

    /** The same gate or run once more, beside the first. */
    @PostMapping("/{room}/copy/{thing}")
    ResponseEntity<String> copy(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @PathVariable String thing,
            @RequestParam long version) {
        return whole(request, id, RoomAnswers.roomOf(room), version, job -> rooms.withCopy(job, thing));
    }

    @PostMapping("/{room}/undo")
    ResponseEntity<String> undo(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version) {
        Saving saving = store.undo(answers.open(id).id(), version, answers.maker(request));
        return answers.saved(request, RoomAnswers.roomOf(room), saving, Asked.whole(version));
    }

    @PostMapping("/{room}/redo")
    ResponseEntity<String> redo(
            HttpServletRequest request,
            @PathVariable String id,
            @PathVariable String room,
            @RequestParam long version) {
        Saving saving = store.redo(answers.open(id).id(), version, answers.maker(request));
        return answers.saved(request, RoomAnswers.roomOf(room), saving, Asked.whole(version));
    }

    private ResponseEntity<String> change(
            HttpServletRequest request, String id, Room room, long version, List<Edit> edits) {
        StoredJob job = answers.open(id);
        Edit edit = edits.get(0);
        Asked asked = new Asked(version, edit.path(), edit.unit(), edit.value());
        if (job.version() != version)
            return isThere(job, edits) ? answers.now(request, job, room) : answers.stale(request, job, room, asked);
        return answers.kept(request, job, room, asked, rooms.apply(job, edits));
    }

    /** Whether the job is as these edits would make it: they were kept before, and the answer was lost on its way. */
    private boolean isThere(StoredJob job, List<Edit> edits) {
        return rooms.apply(job, edits).match(fine -> fine.text().equals(job.document()), refused -> false);
    }

    /** A change to the job as a whole, which sets no single place. */
    private ResponseEntity<String> whole(
            HttpServletRequest request, String id, Room room, long version, Function<StoredJob, Edited> how) {
        StoredJob job = answers.open(id);
        Asked asked = Asked.whole(version);
        if (job.version() != version) return answers.stale(request, job, room, asked);
        return answers.kept(request, job, room, asked, how.apply(job));
    }
}
