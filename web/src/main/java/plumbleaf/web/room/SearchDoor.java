package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.engine.job.Gate;
import plumbleaf.web.page.Room;
import plumbleaf.web.store.StoredJob;

/** Asks for the search of a gate's build, gives it up, and hands out its proof. Nothing in the job changes; prices are seen by those who may. */
@Controller
@RequestMapping("/jobs/{id}/gates")
class SearchDoor {
    private final RoomAnswers answers;
    private final Bench bench;
    private final GateSearches searches;

    SearchDoor(RoomAnswers answers, Bench bench, GateSearches searches) {
        this.answers = answers;
        this.bench = bench;
        this.searches = searches;
    }

    @PostMapping("/search")
    ResponseEntity<String> search(
            HttpServletRequest request, @PathVariable String id, @RequestParam String gate, @RequestParam String how) {
        StoredJob job = seen(request, id);
        SearchHow asked = SearchHow.of(how).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST));
        Opened opened = bench.open(job, Typed.NOTHING);
        searches.ask(opened, gateOf(opened, gate), asked);
        return answers.now(request, job, Room.GATES);
    }

    @PostMapping("/give-up-search")
    ResponseEntity<String> giveUp(HttpServletRequest request, @PathVariable String id, @RequestParam String gate) {
        StoredJob job = seen(request, id);
        searches.giveUp(bench.open(job, Typed.NOTHING), gate);
        return answers.now(request, job, Room.GATES);
    }

    /** Every cheaper build and what it fails. */
    @GetMapping("/cheaper.csv")
    ResponseEntity<byte[]> cheaper(HttpServletRequest request, @PathVariable String id, @RequestParam String gate) {
        Opened opened = bench.open(seen(request, id), Typed.NOTHING);
        Optional<byte[]> proof = searches.of(opened, gate).flatMap(GateSearching::proof);
        return ResponseEntity.ok()
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("cheaper.csv")
                                .build()
                                .toString())
                .header(HttpHeaders.CONTENT_TYPE, "text/csv; charset=utf-8")
                .header(HttpHeaders.CONTENT_ENCODING, "gzip")
                .body(proof.orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND)));
    }

    private StoredJob seen(HttpServletRequest request, String id) {
        if (answers.sight(request) != Sight.EVERYTHING) throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        return answers.open(id);
    }

    private static Gate gateOf(Opened opened, String id) {
        return opened.job().stream()
                .flatMap(job -> job.gates().stream())
                .filter(gate -> gate.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }
}
