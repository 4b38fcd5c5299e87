package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.documents.PaperFile;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;

/** Gives out papers: each file by its name, each page of the packet as a picture. */
@Controller
@RequestMapping("/jobs/{id}/papers")
class PaperDoor {
    private final JobStore store;
    private final Bench bench;
    private final PaperShelf shelf;
    private final WhoIsThere who;

    PaperDoor(JobStore store, Bench bench, PaperShelf shelf, WhoIsThere who) {
        this.who = who;
        this.store = store;
        this.bench = bench;
        this.shelf = shelf;
    }

    @GetMapping("/files/{name}")
    ResponseEntity<byte[]> file(HttpServletRequest request, @PathVariable String id, @PathVariable String name) {
        PaperFile paper = shelf.paper(open(id), name, sight(request)).orElseThrow(PaperDoor::notThere);
        return ResponseEntity.ok()
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(paper.name())
                                .build()
                                .toString())
                .contentType(MediaType.parseMediaType(paper.mediaType()))
                .cacheControl(CacheControl.noStore())
                .body(paper.bytes());
    }

    @GetMapping("/pages/{number}")
    ResponseEntity<byte[]> page(HttpServletRequest request, @PathVariable String id, @PathVariable int number) {
        byte[] picture = shelf.page(open(id), number, sight(request)).orElseThrow(PaperDoor::notThere);
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_PNG)
                .cacheControl(CacheControl.noStore())
                .body(picture);
    }

    private Sight sight(HttpServletRequest request) {
        return Sight.of(who.person(request.getUserPrincipal()).role());
    }

    private Opened open(String id) {
        if (!JobId.isOne(id)) throw notThere();
        return store.open(new JobId(id))
                .map(job -> bench.open(job, Typed.NOTHING))
                .orElseThrow(PaperDoor::notThere);
    }

    private static ResponseStatusException notThere() {
        return new ResponseStatusException(HttpStatus.NOT_FOUND);
    }
}
