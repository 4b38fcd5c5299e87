package plumbleaf.web.yard;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
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
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.stock.ItemNames;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.YardRow;
import plumbleaf.web.books.HouseBooks;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;

/** Shows the yard, gives its file out and takes it in again after counting. */
@Controller
class YardDoor {
    private static final int MOST_ERRORS = 60;

    private final HouseYard yard;
    private final HouseBooks books;
    private final Pages pages;
    private final WhoIsThere who;

    YardDoor(HouseYard yard, HouseBooks books, Pages pages, WhoIsThere who) {
        this.yard = yard;
        this.books = books;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/yard")
    ResponseEntity<String> yard(HttpServletRequest request) {
        return shown(request, HttpStatus.OK, List.of());
    }

    @GetMapping("/yard.csv")
    ResponseEntity<byte[]> file() {
        ContentDisposition download =
                ContentDisposition.attachment().filename("yard.csv").build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, download.toString())
                .header(HttpHeaders.CONTENT_TYPE, "text/csv; charset=utf-8")
                .body(yard.file().getBytes(StandardCharsets.UTF_8));
    }

    @PostMapping("/yard")
    ResponseEntity<String> bring(HttpServletRequest request, @RequestParam MultipartFile file) throws IOException {
        List<InputError> errors = yard.bring(new String(file.getBytes(), StandardCharsets.UTF_8), name(request));
        if (!errors.isEmpty())
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    errors.stream().limit(MOST_ERRORS).map(InputError::text).toList());
        return back();
    }

    /** What lies there of one mark, counted again. */
    @PostMapping("/yard/count")
    ResponseEntity<String> count(HttpServletRequest request, @RequestParam String mark, @RequestParam String count) {
        boolean known = yard.yard().rows().stream()
                .anyMatch(row -> row.isHere() && row.mark().equals(mark));
        if (!known) return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, List.of("Nothing here is marked " + mark));
        if (!count.strip().matches("\\d{1,5}"))
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    List.of(mark + ": \"" + count + "\" is no count; write a whole number up to 99999"));
        int now = Integer.parseInt(count.strip());
        yard.change(before -> before.counted(mark, now), mark + " counted: " + now, name(request));
        return back();
    }

    /** One more mark, read like a row of the file. */
    @PostMapping("/yard/add")
    ResponseEntity<String> add(HttpServletRequest request, @RequestParam Map<String, String> typed) {
        List<InputError> errors = yard.add(typed, name(request));
        if (errors.isEmpty()) return back();
        return shown(
                request,
                HttpStatus.UNPROCESSABLE_CONTENT,
                errors.stream().limit(MOST_ERRORS).map(InputError::said).toList());
    }

    /** What a job has here or on site and does not need, free for any other. */
    @PostMapping("/yard/back")
    ResponseEntity<String> cameBack(
            HttpServletRequest request,
            @RequestParam String mark,
            @RequestParam String job,
            @RequestParam String number,
            @RequestParam String count) {
        Taker taker = new Taker(job, number);
        int has = yard.yard().with(taker, mark);
        boolean good = count.strip().matches("[1-9]\\d{0,4}") && Integer.parseInt(count.strip()) <= has;
        if (!good)
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    List.of(mark + ": " + (job.isEmpty() ? "nobody" : job) + " has " + has
                            + "; write a whole number up to that"));
        int some = Integer.parseInt(count.strip());
        yard.change(
                before -> before.cameBack(taker, mark, some),
                some + " of " + mark + " free, from " + job,
                name(request));
        return back();
    }

    private String name(HttpServletRequest request) {
        return who.person(request.getUserPrincipal()).name();
    }

    private static ResponseEntity<String> back() {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/yard"))
                .build();
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, List<String> errors) {
        ItemNames names = books.itemNames();
        List<YardLine> here = new ArrayList<>();
        List<YardLine> kept = new ArrayList<>();
        List<YardLine> out = new ArrayList<>();
        for (YardRow row : yard.yard().rows()) {
            if (row.count() > 0) (row.isHere() ? here : row.isKept() ? kept : out).add(YardLine.of(row, names));
        }
        return pages.html(
                status,
                "yard.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Yard"),
                        "here",
                        here,
                        "kept",
                        kept,
                        "items",
                        names.all(),
                        "out",
                        out,
                        "history",
                        yard.history(),
                        "errors",
                        errors));
    }
}
