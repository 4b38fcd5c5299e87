package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.Map;
import java.util.Objects;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Room;
import plumbleaf.web.page.RoomView;
import plumbleaf.web.page.Unit;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Maker;
import plumbleaf.web.store.Saving;
import plumbleaf.web.store.StoredJob;

/** How the doors of a room answer: with the room as it stands, with what was refused beside its field, or with the change that came first. */
@Component
class RoomAnswers {
    private final JobStore store;
    private final Rooms rooms;
    private final Pages pages;
    private final WhoIsThere who;

    RoomAnswers(JobStore store, Rooms rooms, Pages pages, WhoIsThere who) {
        this.store = store;
        this.rooms = rooms;
        this.pages = pages;
        this.who = who;
    }

    /** A change as it came from a form. */
    record Asked(long version, String path, Unit unit, String value) {
        static Asked whole(long version) {
            return new Asked(version, "", Unit.WORDS, "");
        }
    }

    /** Keeps a change that reads well and shows the room; says what was wrong with any other. */
    ResponseEntity<String> kept(HttpServletRequest request, StoredJob job, Room room, Asked asked, Edited edited) {
        return edited.match(
                fine -> saved(
                        request,
                        room,
                        store.edit(job.id(), asked.version(), fine.title(), fine.text(), fine.what(), maker(request)),
                        asked),
                refused -> refused(request, job, room, new Typed(refused.path(), asked.value(), refused.problem())));
    }

    ResponseEntity<String> refused(HttpServletRequest request, StoredJob job, Room room, Typed typed) {
        return shown(
                request,
                HttpStatus.UNPROCESSABLE_CONTENT,
                rooms.view(room, job, typed, sight(request), Breadth.of(request)));
    }

    ResponseEntity<String> stale(HttpServletRequest request, StoredJob job, Room room, Asked asked) {
        return saved(request, room, store.stale(job.id(), maker(request)), asked);
    }

    ResponseEntity<String> saved(HttpServletRequest request, Room room, Saving saving, Asked asked) {
        return saving.match(saved -> now(request, saved.now(), room), stale -> {
            String theirs = stale.who() + ": " + stale.what();
            String now = rooms.valueAt(stale.now(), asked.path());
            RoomView view = rooms.view(room, stale.now(), Typed.NOTHING, sight(request), Breadth.of(request))
                    .withConflict(
                            new RoomView.Conflict(asked.path(), asked.unit().name(), theirs, now, asked.value()));
            return shown(request, HttpStatus.CONFLICT, view);
        });
    }

    /** The room as it stands: for a script its inside, else the way there. */
    ResponseEntity<String> now(HttpServletRequest request, StoredJob job, Room room) {
        return isLive(request)
                ? shown(
                        request,
                        HttpStatus.OK,
                        rooms.view(room, job, Typed.NOTHING, sight(request), Breadth.of(request)))
                : to(job, room);
    }

    ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, RoomView view) {
        String title = view.room().word() + " \u00b7 " + view.job().title();
        Map<String, Object> values =
                Map.of("frame", pages.frame(request, title), "view", view, "breadth", Breadth.of(request));
        return pages.html(status, isLive(request) ? "inside.jte" : "room.jte", values);
    }

    private static boolean isLive(HttpServletRequest request) {
        return request.getHeader("X-Live") != null;
    }

    StoredJob open(String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return store.open(new JobId(id)).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    static Room roomOf(String key) {
        return Room.of(key).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    Sight sight(HttpServletRequest request) {
        return Sight.of(who.person(request.getUserPrincipal()).role());
    }

    String me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal()).name();
    }

    /** Who changes something, and under which name their device sends it. */
    Maker maker(HttpServletRequest request) {
        return Maker.of(me(request)).sending(Objects.requireNonNullElse(request.getParameter("sending"), ""));
    }

    static ResponseEntity<String> to(StoredJob job, Room room) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs/" + job.id() + "/" + room.key()))
                .build();
    }
}
