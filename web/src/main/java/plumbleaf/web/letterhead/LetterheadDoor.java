package plumbleaf.web.letterhead;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbleaf.documents.drawing.Emblem;
import plumbleaf.documents.mark.MarkFile;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;

/** Where the house says who issues its papers and brings its own mark. */
@Controller
class LetterheadDoor {
    private final HouseLetterhead letterhead;
    private final Pages pages;
    private final WhoIsThere who;

    LetterheadDoor(HouseLetterhead letterhead, Pages pages, WhoIsThere who) {
        this.letterhead = letterhead;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/letterhead")
    ResponseEntity<String> letterhead(HttpServletRequest request) {
        return shown(request, HttpStatus.OK, letterhead.heading().orElse(Heading.NONE), Map.of());
    }

    @GetMapping("/letterhead/mark.png")
    ResponseEntity<byte[]> mark() {
        byte[] png = letterhead.mark();
        if (png.length == 0) return ResponseEntity.notFound().build();
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_PNG)
                .cacheControl(CacheControl.noStore())
                .body(png);
    }

    @PostMapping("/letterhead")
    ResponseEntity<String> put(
            HttpServletRequest request,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String address,
            @RequestParam(defaultValue = "") String phone,
            @RequestParam(defaultValue = "") String license,
            @RequestParam(defaultValue = "") String more,
            @RequestParam(defaultValue = "") String webAddress,
            @RequestParam(defaultValue = "letter") String paper,
            @RequestParam(defaultValue = "tabloid") String sheets,
            @RequestParam(defaultValue = "false") boolean without,
            @RequestParam(required = false) MultipartFile mark)
            throws IOException {
        Heading typed = new Heading(name, address, phone, license, more, webAddress, paper, sheets);
        Map<String, String> problems = new LinkedHashMap<>(typed.problems());
        byte[] png = without ? new byte[0] : letterhead.mark();
        if (mark != null && !mark.isEmpty()) {
            MarkFile.Answer answer = MarkFile.read(mark.getBytes());
            png = answer.emblem().map(Emblem::png).orElse(png);
            if (!answer.problem().isEmpty()) problems.put("mark", "Not taken: " + answer.problem() + ".");
        }
        if (!problems.isEmpty()) return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, typed, problems);
        letterhead.put(typed, png, who.person(request.getUserPrincipal()).name());
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/letterhead"))
                .build();
    }

    private ResponseEntity<String> shown(
            HttpServletRequest request, HttpStatus status, Heading heading, Map<String, String> problems) {
        return pages.html(
                status,
                "letterhead.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Letterhead"),
                        "heading",
                        heading,
                        "mark",
                        letterhead.mark().length == 0 ? "" : "/letterhead/mark.png?v=" + letterhead.version(),
                        "problems",
                        problems));
    }
}
