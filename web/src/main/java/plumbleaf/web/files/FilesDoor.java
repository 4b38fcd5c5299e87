package plumbleaf.web.files;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.Person;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.room.JobParts;
import plumbleaf.web.room.Sight;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The files of a job: anybody who works on it adds to them; who sees no money sees none that are the office's. */
@Controller
@RequestMapping("/jobs/{id}/files")
class FilesDoor {
    private final JobStore store;
    private final JobFiles files;
    private final Pages pages;
    private final WhoIsThere who;

    FilesDoor(JobStore store, JobFiles files, Pages pages, WhoIsThere who) {
        this.store = store;
        this.files = files;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping
    ResponseEntity<String> list(HttpServletRequest request, @PathVariable String id) {
        return shown(request, HttpStatus.OK, job(id), "");
    }

    /**
     * @param question of the walk, where the photo answers one
     * @param walk its number, to go back to
     */
    @PostMapping
    ResponseEntity<String> add(
            HttpServletRequest request,
            @PathVariable String id,
            @RequestParam List<MultipartFile> file,
            @RequestParam(defaultValue = "job") String part,
            @RequestParam(defaultValue = "") String question,
            @RequestParam(defaultValue = "0") int walk)
            throws IOException {
        StoredJob job = job(id);
        Person me = me(request);
        for (MultipartFile one : file) {
            if (one.isEmpty()) continue;
            String name = one.getOriginalFilename() == null ? "file" : one.getOriginalFilename();
            try {
                byte[] bytes = one.getBytes();
                files.add(job.id(), placed(part, bytes, me), PhotosOfQuestions.named(question, name), bytes, me.name());
            } catch (JobFiles.Refused refused) {
                String problem = JobFiles.tidy(name) + " was not taken in: " + refused.getMessage() + ".";
                return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, job, problem);
            }
        }
        return walk > 0 ? to("/jobs/" + id + "/walk/" + walk) : back(id);
    }

    /** A paper that somebody of the office lays with the whole job may hold prices: it stays with the office. */
    private static String placed(String part, byte[] bytes, Person me) {
        if (!me.role().seesMoney()) return part.equals(JobFiles.OFFICE) ? "job" : part;
        boolean photo = FileKind.of(bytes).map(FileKind::isPhoto).orElse(false);
        return part.equals("job") && !photo ? JobFiles.OFFICE : part;
    }

    @GetMapping("/{file}")
    ResponseEntity<byte[]> file(HttpServletRequest request, @PathVariable String id, @PathVariable String file) {
        JobFiles.Whole whole = files.open(job(id).id(), file)
                .filter(one -> isFor(one.line(), request))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        FileKind kind = whole.line().kind();
        ContentDisposition how = (kind.isShown() ? ContentDisposition.inline() : ContentDisposition.attachment())
                .filename(whole.line().name(), StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, how.toString())
                .header("Content-Security-Policy", "default-src 'none'; sandbox")
                .contentType(MediaType.parseMediaType(kind.mediaType()))
                .cacheControl(CacheControl.noStore())
                .body(whole.bytes());
    }

    @PostMapping("/{file}/throw-away")
    ResponseEntity<String> throwAway(@PathVariable String id, @PathVariable String file) {
        files.setTrashed(job(id).id(), file, true);
        return back(id);
    }

    @PostMapping("/{file}/take-back")
    ResponseEntity<String> takeBack(@PathVariable String id, @PathVariable String file) {
        files.setTrashed(job(id).id(), file, false);
        return back(id);
    }

    private boolean isFor(JobFiles.Line line, HttpServletRequest request) {
        return me(request).role().seesMoney() || (!line.part().equals(JobFiles.OFFICE) && !line.trashed());
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, StoredJob job, String problem) {
        List<JobFiles.Line> lines =
                files.of(job.id()).stream().filter(line -> isFor(line, request)).toList();
        List<Choice> parts = new ArrayList<>();
        parts.add(new Choice("job", "the job"));
        parts.addAll(JobParts.of(job));
        if (Sight.of(me(request).role()) == Sight.EVERYTHING) parts.add(new Choice(JobFiles.OFFICE, "the office only"));
        return pages.html(
                status,
                "files.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Files \u00b7 " + job.title()),
                        "job",
                        job.id().text(),
                        "title",
                        job.title(),
                        "files",
                        lines.stream()
                                .filter(line -> !line.trashed())
                                .map(FileView::of)
                                .toList(),
                        "trashed",
                        lines.stream()
                                .filter(JobFiles.Line::trashed)
                                .map(FileView::of)
                                .toList(),
                        "parts",
                        parts,
                        "problem",
                        problem));
    }

    private StoredJob job(String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return store.open(new JobId(id)).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private Person me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal());
    }

    private static ResponseEntity<String> back(String id) {
        return to("/jobs/" + id + "/files");
    }

    private static ResponseEntity<String> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(address))
                .build();
    }
}
