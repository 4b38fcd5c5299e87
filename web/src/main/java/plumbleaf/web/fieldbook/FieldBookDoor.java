package plumbleaf.web.fieldbook;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The field book's files, and each job as a device may hold it. */
@Controller
class FieldBookDoor {
    /** As for every page, and two things more: WebAssembly may be compiled, and the page may be kept with its manifest. No text is run as a script. */
    private static final String POLICY =
            "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; font-src 'self'; img-src 'self' blob: data:;"
                    + " connect-src 'self'; worker-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final BookFiles files = new BookFiles();
    private final JobStore store;
    private final HeldJobs held;
    private final Pages pages;
    private final WhoIsThere who;

    FieldBookDoor(JobStore store, HeldJobs held, Pages pages, WhoIsThere who) {
        this.store = store;
        this.held = held;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/field-book/")
    ResponseEntity<byte[]> page() {
        return ResponseEntity.ok()
                .header("Content-Security-Policy", POLICY)
                .contentType(MediaType.parseMediaType("text/html;charset=UTF-8"))
                .cacheControl(CacheControl.noCache())
                .body(files.text("page.html"));
    }

    @GetMapping("/field-book/{file}")
    ResponseEntity<byte[]> file(@PathVariable String file) {
        byte[] bytes = files.find(file).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(BookFiles.kindOf(file)))
                // A thread of the page's keeps the policy of its own file.
                .header("Content-Security-Policy", POLICY)
                .cacheControl(CacheControl.noCache())
                .body(bytes);
    }

    /** @param sent the names of changes that the device sent and heard no answer to */
    @GetMapping("/field-book/jobs/{id}")
    ResponseEntity<String> job(
            HttpServletRequest request, @PathVariable String id, @RequestParam(defaultValue = "") List<String> sent) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        StoredJob job = store.open(new JobId(id)).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        String token = pages.frame(request, job.title()).csrf();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("application/json;charset=UTF-8"))
                .cacheControl(CacheControl.noStore())
                .body(held.json(job, who.person(request.getUserPrincipal()), token, store.come(job.id(), sent)));
    }
}
