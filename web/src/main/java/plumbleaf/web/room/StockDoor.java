package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import plumbleaf.engine.design.Design;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.stock.OrderTables;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.yard.HouseYard;
import plumbleaf.web.yard.Receipts;

/** Order, load list and receiving of a job, and what it takes out of the yard. */
@Controller
@RequestMapping("/jobs/{id}/stock")
class StockDoor {
    private static final int MOST_DIGITS = 7;

    private final JobStore store;
    private final Bench bench;
    private final HouseYard yard;
    private final Receipts receipts;
    private final Pages pages;
    private final WhoIsThere who;

    StockDoor(JobStore store, Bench bench, HouseYard yard, Receipts receipts, Pages pages, WhoIsThere who) {
        this.store = store;
        this.bench = bench;
        this.yard = yard;
        this.receipts = receipts;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/order.csv")
    ResponseEntity<byte[]> order(@PathVariable String id) {
        return csv("order.csv", OrderTables.order(design(id).quote().takeoff()));
    }

    @GetMapping("/load.csv")
    ResponseEntity<byte[]> load(@PathVariable String id) {
        return csv("load.csv", OrderTables.load(design(id).quote().load()));
    }

    /** With costs and reasons: for those who see money. */
    @GetMapping("/takeoff.csv")
    ResponseEntity<byte[]> takeoff(HttpServletRequest request, @PathVariable String id) {
        if (!who.person(request.getUserPrincipal()).role().seesMoney())
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        return csv("takeoff.csv", OrderTables.takeoff(design(id).quote().takeoff()));
    }

    @PostMapping("/take-from-yard")
    ResponseEntity<String> take(HttpServletRequest request, @PathVariable String id) {
        Opened opened = opened(id);
        Taker job = opened.taker();
        if (!yard.yard().knows(job))
            yard.change(
                    before -> before.after(job, design(opened).quote().takeoff()),
                    "taken for " + job.title(),
                    me(request));
        return back(id, "");
    }

    @PostMapping("/give-back")
    ResponseEntity<String> giveBack(HttpServletRequest request, @PathVariable String id) {
        Taker job = opened(id).taker();
        if (yard.yard().usedSince(job).isEmpty())
            yard.change(before -> before.givenBack(job), "given back by " + job.title(), me(request));
        return back(id, "");
    }

    @GetMapping("/receiving")
    ResponseEntity<String> receiving(HttpServletRequest request, @PathVariable String id) {
        Map<String, Long> came = receipts.of(id);
        List<ReceiptLine> lines = new ArrayList<>();
        for (TakeoffLine line : ordered(id)) {
            Long count = came.get(Receipts.key(line.sold().supplier(), mark(line)));
            lines.add(new ReceiptLine(
                    line.sold().supplier(),
                    mark(line),
                    line.sold().name(),
                    line.units(),
                    line.sold().unit().key(),
                    count == null ? "" : Long.toString(count)));
        }
        return pages.html(
                HttpStatus.OK,
                "receiving.jte",
                Map.of("frame", pages.frame(request, "Receiving"), "job", id, "lines", lines));
    }

    /** One count: what came of one line. */
    @PostMapping("/receiving")
    ResponseEntity<String> count(
            HttpServletRequest request,
            @PathVariable String id,
            @RequestParam String supplier,
            @RequestParam String item,
            @RequestParam String came) {
        boolean known = ordered(id).stream()
                .anyMatch(line ->
                        line.sold().supplier().equals(supplier) && mark(line).equals(item));
        boolean number = came.strip().matches("\\d{1," + MOST_DIGITS + "}");
        if (!known || !number) throw new ResponseStatusException(HttpStatus.UNPROCESSABLE_CONTENT);
        receipts.count(id, supplier, item, Long.parseLong(came.strip()), me(request));
        return back(id, "/receiving");
    }

    private List<TakeoffLine> ordered(String id) {
        return design(id).quote().takeoff().lines().stream()
                .filter(line -> line.units() > 0)
                .toList();
    }

    /** An item may be ordered in two lengths. */
    private static String mark(TakeoffLine line) {
        return line.item() + " x " + line.sold().contents();
    }

    private Design design(String id) {
        return design(opened(id));
    }

    private static Design design(Opened opened) {
        return opened.design().orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private Opened opened(String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return store.open(new JobId(id))
                .map(job -> bench.open(job, Typed.NOTHING))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private String me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal()).name();
    }

    private static ResponseEntity<byte[]> csv(String name, String text) {
        return ResponseEntity.ok()
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .header(HttpHeaders.CONTENT_TYPE, "text/csv; charset=utf-8")
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    private static ResponseEntity<String> back(String id, String below) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs/" + id + "/stock" + below))
                .build();
    }
}
