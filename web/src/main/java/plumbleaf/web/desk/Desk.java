package plumbleaf.web.desk;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.room.Sight;
import plumbleaf.web.room.Veil;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The desk: every job by where it stands, latest change first; job files come in here and go out. */
@Controller
class Desk {
    private static final int MOST_ERRORS = 40;

    private final DeskSheets sheets;
    private final JobStore store;
    private final Rooms rooms;
    private final Pages pages;
    private final WhoIsThere who;

    Desk(DeskSheets sheets, JobStore store, Rooms rooms, Pages pages, WhoIsThere who) {
        this.sheets = sheets;
        this.store = store;
        this.rooms = rooms;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/")
    ResponseEntity<String> desk(HttpServletRequest request) {
        return shown(request, HttpStatus.OK, List.of());
    }

    /** Takes a job file in, whole or not at all. */
    @PostMapping("/jobs")
    ResponseEntity<String> takeIn(HttpServletRequest request, @RequestParam MultipartFile file) throws IOException {
        String name = file.getOriginalFilename() == null ? "the file" : file.getOriginalFilename();
        byte[] bytes = file.getBytes();
        List<String> errors =
                rooms.errors(name, bytes).stream().map(InputError::text).toList();
        if (!errors.isEmpty()) return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, errors);
        String text = new String(bytes, StandardCharsets.UTF_8);
        String me = who.person(request.getUserPrincipal()).name();
        StoredJob job = store.create(Rooms.titleOf(text), text, me);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs/" + job.id()))
                .build();
    }

    /** The job as its file. */
    @GetMapping("/jobs/{id}/file")
    ResponseEntity<byte[]> file(HttpServletRequest request, @PathVariable String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        StoredJob job = store.open(new JobId(id)).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        String text = sight(request) == Sight.EVERYTHING ? job.document() : Veil.json(job.document());
        ContentDisposition download = ContentDisposition.attachment()
                .filename(job.title().replaceAll("[^A-Za-z0-9]+", "-") + ".json")
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, download.toString())
                .contentType(MediaType.APPLICATION_JSON)
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    private Sight sight(HttpServletRequest request) {
        return Sight.of(who.person(request.getUserPrincipal()).role());
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, List<String> errors) {
        List<String> first = errors.size() > MOST_ERRORS ? errors.subList(0, MOST_ERRORS) : errors;
        return pages.html(
                status,
                "desk.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Desk"),
                        "sheet",
                        sheets.of(request, sight(request)),
                        "errors",
                        first));
    }
}
