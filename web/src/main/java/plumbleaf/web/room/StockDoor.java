package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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
import plumbleaf.web.yard.TailGate;

/** Order, load list and receiving of a job, and what it takes out of the yard. */
@Controller
@RequestMapping("/jobs/{id}/stock")
class StockDoor {
    private static final int MOST_DIGITS = 7;

    private final JobStore store;
    private final Bench bench;
    private final HouseYard yard;
    private final TailGate gate;
    private final Pages pages;
    private final WhoIsThere who;

    StockDoor(JobStore store, Bench bench, HouseYard yard, TailGate gate, Pages pages, WhoIsThere who) {
        this.store = store;
        this.bench = bench;
        this.yard = yard;
        this.gate = gate;
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
        return receiving(request, id, HttpStatus.OK, List.of());
    }

    /** What is ticked of one delivery: into the yard, kept for the job. */
    @PostMapping("/receiving")
    ResponseEntity<String> count(HttpServletRequest request, @PathVariable String id) {
        Set<String> ticked = ticked(request);
        List<TailGate.Count> counts = new ArrayList<>();
        List<String> errors = new ArrayList<>();
        for (TakeoffLine line : ordered(id)) {
            if (!ticked.remove(TailGate.key(line))) continue;
            String came = typed(request, line);
            if (came.matches("\\d{1," + MOST_DIGITS + "}"))
                counts.add(new TailGate.Count(line, Integer.parseInt(came)));
            else errors.add(line.sold().name() + ": \"" + came + "\" is no count; write a whole number up to 9999999");
        }
        if (!ticked.isEmpty()) errors.add("The order has changed since: look at it again");
        if (counts.isEmpty() && errors.isEmpty()) errors.add("Nothing is ticked");
        if (!errors.isEmpty()) return receiving(request, id, HttpStatus.UNPROCESSABLE_CONTENT, errors);
        gate.take(id, opened(id).taker(), counts, me(request));
        return back(id, "/receiving");
    }

    /** One line as if it had not come. */
    @PostMapping("/receiving/undo")
    ResponseEntity<String> undo(HttpServletRequest request, @PathVariable String id, @RequestParam String line) {
        Taker job = opened(id).taker();
        for (TakeoffLine ordered : ordered(id)) {
            if (!TailGate.key(ordered).equals(line)) continue;
            if (gate.undo(id, job, ordered, me(request))) return back(id, "/receiving");
            return receiving(
                    request,
                    id,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    List.of(ordered.sold().name()
                            + ": some of it has been taken or set free since; give it back first"));
        }
        throw new ResponseStatusException(HttpStatus.UNPROCESSABLE_CONTENT);
    }

    private ResponseEntity<String> receiving(
            HttpServletRequest request, String id, HttpStatus status, List<String> errors) {
        Map<String, Long> came = gate.soFar(id);
        Set<String> ticked = ticked(request);
        List<ReceiptLine> lines = new ArrayList<>();
        for (TakeoffLine line : ordered(id)) {
            String key = TailGate.key(line);
            long count = came.getOrDefault(key, 0L);
            lines.add(new ReceiptLine(
                    key,
                    line.sold().supplier(),
                    line.sold().name(),
                    line.units(),
                    line.sold().unit().key(),
                    count,
                    came.containsKey(key),
                    need(line),
                    errors.isEmpty() ? Long.toString(Math.max(0, line.units() - count)) : typed(request, line),
                    ticked.contains(key)));
        }
        String title = design(id).job().title();
        Map<String, Object> values = Map.of(
                "frame",
                pages.frame(request, "Receiving for " + title),
                "job",
                id,
                "title",
                title,
                "lines",
                lines,
                "errors",
                errors);
        return pages.html(status, "receiving.jte", values);
    }

    private static Set<String> ticked(HttpServletRequest request) {
        String[] ticked = request.getParameterValues("tick");
        return new TreeSet<>(ticked == null ? List.of() : List.of(ticked));
    }

    private static String typed(HttpServletRequest request, TakeoffLine line) {
        String came = request.getParameter("came." + TailGate.key(line));
        return came == null ? "" : came.strip();
    }

    private static String need(TakeoffLine line) {
        String day = OrderTables.day(line);
        return day.isEmpty()
                ? line.need().work()
                : "by " + day + ", " + line.need().work();
    }

    private List<TakeoffLine> ordered(String id) {
        return design(id).quote().takeoff().lines().stream()
                .filter(line -> line.units() > 0)
                .toList();
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
